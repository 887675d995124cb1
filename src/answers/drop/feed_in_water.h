#pragma once

#include <string>
#include <vector>

#include "bait/resolved_mix.h"
#include "bait/wetted_mix.h"
#include "physics/settling.h"
#include "quantities/quantity.h"

namespace baitwright {

/// Grains of one size of one ingredient, as they lie in the wetted feed.
struct GrainClass {
    std::size_t solid;  ///< its place among the solids
    Ratio share;        ///< of the dry mass
    Length size;        ///< swollen, of equal volume
    Speed settling;     ///< below zero for what rises
    Ratio weight;       ///< under water, g per gram of its own
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
    Ratio weight;  ///< of all of it under water, g per gram dry
};

/// The classes of a wetted feed: of each ingredient nine of equal mass, at the mid-points of its log-normal sizes, none
/// below 0.1 mm; and its fines, of 60 micrometres. Pellets, seeds, live and cooked feed settle by Haider & Levenspiel
/// with sphericity 0.87, the rest by Ferguson & Church, with the swollen size and the excess density m (1 -
/// rho_w/skeleton)/v'.
FeedInWater feed_in_water(const ResolvedMix& mix, const MixNumbers& numbers, const WettedMix& wetted,
                          const StillWater& water);

}  // namespace baitwright
