#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "answers/strategy/fed_mix.h"
#include "bait/kept_mix.h"
#include "bait/strategy.h"

namespace baitwright {

/// An ingredient with its mass as bought (pellets: before soaking).
struct IngredientNeed {
    Ingredient ingredient;
    Mass mass;
    Mass soaked;     ///< how much of it is soaked
    Mass kept = {};  ///< beside that, what lies made up already in the kept mix that is used
};

/// Damp mix from the cold or the freezer that a feed uses up, for everyone.
struct KeptUse {
    KeptMix of;              ///< with the mass that is used of it
    std::size_t place = 0;   ///< in `StrategyRequest::kept`
    std::string fed_at;      ///< the feel that it goes in at
    Ratio wetness;           ///< that it was kept at; 0 where it goes in as it is
    Mass dry;                ///< solids in it, as bought
    Mass water, soak_water;  ///< that were stirred into it, and that its soaked pellets hold
    Mass more_water;         ///< brings it to the feel; below zero it is wetter, and gives so much to the fresh mix
};

/// What one feed takes, for everyone and every session, spare and all. What goes in is counted whole; what is to be
/// weighed, wetted and got is without the kept mix that is used.
struct FeedNeed {
    std::size_t written = 0;  ///< its place in the strategy, from 0
    std::string name;
    FeedForm form = FeedForm::cup;
    FeedSize size;
    int count = 1;
    std::size_t put_ins = 0;  ///< in one session; as bites slow: as reckoned, upwards
    double slow_times = 0;    ///< how often it is reckoned to go in as bites slow; 0: it goes by the clock
    Time slow_from;           ///< and not before
    std::optional<Time> slow_until;
    double portions = 0;  ///< cups, balls or handfuls; not whole, for the spare
    FedMix fed;
    Mass dry;  ///< solids to weigh, as bought
    Mass wet_mass;
    Volume wet_volume;
    Mass water;       ///< to stir in, into what is kept too
    Mass soak_water;  ///< that the soaked pellets to weigh take up
    double free_offerings = 0;
    std::vector<IngredientNeed> ingredients;
    std::vector<KeptUse> kept;
};

/// Adds to the need of the same ingredient, or as one more.
void add_need(std::vector<IngredientNeed>& needs, const IngredientNeed& more);

/// All that so much dry mix takes and makes, for a need whose `fed` is set.
void fill(FeedNeed& need, const FedPerDry& each, Mass dry);

}  // namespace baitwright
