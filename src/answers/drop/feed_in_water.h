#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/resolved_mix.h"
#include "bait/wetted_mix.h"
#include "physics/settling.h"
#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

/// What is lighter than water and drinks: it floats until its pores have filled so far that it sinks.
struct Afloat {
    Time until;
    Speed then;  ///< how fast it settles with its pores full
};

/// Grains of one size of one ingredient, as they lie in the wetted feed.
struct GrainClass {
    std::size_t solid;  ///< its place among the solids
    Ratio share;        ///< of the dry mass
    Length size;        ///< swollen, of equal volume
    Speed settling;     ///< below zero for what rises
    Ratio weight;       ///< under water, g per gram of its own
    std::optional<Afloat> afloat;
};

/// What of a feed's dry mass is fines, under 0.1 mm, that cloud the water; and how fast they settle.
struct FinesShare {
    std::size_t solid;
    Ratio share;  ///< of the dry mass
    Speed settling;
    Ratio weight;
};

/// Of pellets and what is like them: surface of the sphere of their volume over their own.
inline constexpr double pellet_sphericity = 0.87;

/// The diameter of the sphere of a dry grain's volume, in the middle of its sizes.
Length volume_diameter(const Ingredient& in);

struct FeedInWater {
    std::vector<GrainClass> grains;
    std::vector<FinesShare> fines;
    Ratio weight;  ///< of all of it under water, with the air in its pores, g per gram dry
};

/// The classes of a wetted feed: of each ingredient nine of equal mass, at the mid-points of its log-normal sizes, none
/// below 0.1 mm; and its fines in four sizes, evenly by their logarithm from 10 to 90 micrometres. Pellets, seeds, live
/// and cooked feed settle by Haider & Levenspiel with sphericity 0.87, the rest by Ferguson & Church, with the swollen
/// size. A grain carries the air that its pores still hold half an hour after the wetting: it weighs 1 - rho_w/skeleton
/// - rho_w air under water, per gram; pressed out of what is springy where the feed is squeezed. Fines are all wet
/// through.
FeedInWater feed_in_water(const ResolvedMix& mix, const MixNumbers& numbers, const WettedMix& wetted, bool squeezed,
                          Temperature temperature, const StillWater& water);

}  // namespace baitwright
