#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "answers/strategy/feed_need.h"
#include "answers/strategy/strategy_request.h"
#include "bait/shelf.h"
#include "bait/strategy.h"

namespace baitwright {

/// One time that a feed goes in, in one angler's session.
struct PutIn {
    Time at;
    std::size_t feed = 0;  ///< its place among the feeds that are left, from 0
    FeedForm form = FeedForm::cup;
    int count = 1;
    Volume each_volume;  ///< of one cup, ball or portion, as it goes in
    Mass each_mass;
    Volume wet_volume;  ///< of all that go in at once
    Mass wet_mass;
};

struct HookbaitNeed {
    std::string name;
    double count = 0;  ///< single baits, whole where they are reckoned from bites
    Mass mass;
    Volume volume;  ///< loose
};

/// A strategy unrolled: what goes in when, and what all of it takes. Unrounded.
struct UnrolledStrategy {
    std::string name;
    Time length;
    int people = 1;
    int times = 1;
    Ratio spare;
    std::vector<PutIn> put_ins;  ///< by time, then by feed
    std::vector<FeedNeed> feeds;
    std::vector<HookbaitNeed> hookbaits;
    std::vector<IngredientNeed> totals;  ///< hookbaits among them; each ingredient once, in the order of first need
    std::vector<KeptUse> kept;           ///< what all feeds use of each tub
    Mass dry;                            ///< of the feeds
    Mass wet_mass;
    Volume wet_volume;
    Mass water, soak_water;
    double free_offerings = 0;
    std::vector<std::string> cautions;
    std::vector<Warning> warnings;
};

/// Unrolls it. A feed of parts at several feels is several here, with one `written`, that go in together. What is fed
/// as bites slow is among the feeds, but has no put-ins. The spare is applied once, to the feeds and to hookbaits by
/// bites; an amount of hookbaits is taken as it stands. Throws InputError with every fault, by the subjects of
/// `strategy_names.h`; UsageError for a request that cannot be: a length outside 1 min to 24 h, an unknown feel,
/// something to leave out that is not there.
UnrolledStrategy unroll_strategy(const Shelf& shelf, const Strategy& strategy, const StrategyRequest& request = {});

}  // namespace baitwright
