#pragma once

#include <optional>
#include <span>
#include <vector>

#include "bait/mix_state.h"
#include "bait/resolved_mix.h"
#include "bait/wetness.h"

/// The mix as numbers, everything per gram of dry mass, so that scaling is one multiplication and so that a draw from
/// the properties' spreads can go through the same equations.
namespace baitwright {

/// One solid as the equations see it.
struct SolidNumbers {
    Ratio share;       ///< of the dry mass
    bool takes_water;  ///< part of M; the rest brings its own
    WaterMarks marks;
    Ratio moisture;  ///< at which the marks are stated, wet basis
    Ratio inside;    ///< theta, share of A inside the grains
    Ratio carried;   ///< water it brings inside, g/g (soaked batches)
    Ratio film;      ///< water it brings on its surface, g/g
    Density loose, envelope, skeleton;
    Length size;
    bool springy =
        false;  ///< crumb, meal, powder: a squeeze presses the air out of its pores; pellet, seed and soil are hard
    friend bool operator==(const SolidNumbers&, const SolidNumbers&) = default;
};

/// One liquid or powder additive: its grams per gram dry = fixed + by_water x (water to add) + by_wet x (wet mass).
struct AdditiveNumbers {
    Ratio fixed, by_water, by_wet;
    Ratio wetting;    ///< grams of wetting per gram
    Density density;  ///< of a liquid
    bool liquid;
    SolidNumbers as_solid;  ///< of a powder
    friend bool operator==(const AdditiveNumbers&, const AdditiveNumbers&) = default;
};

struct MixNumbers {
    std::vector<SolidNumbers> solids;
    std::vector<AdditiveNumbers> additives;  ///< liquid parts first, then doses, in the order of the resolved mix
    Ratio cup_weight = 1.0;                  ///< what a level cup weighs, against our model
    friend bool operator==(const MixNumbers&, const MixNumbers&) = default;
};

/// With what the measured bags told of the hand reckoned into the marks of the others.
MixNumbers numbers_of(const ResolvedMix& mix);

/// A and B over the solids that take water, and M, their share of the dry mass.
struct MixWaterNeed {
    WaterMarks marks;
    Ratio wetted_share;  ///< M per dry mass
};
MixWaterNeed water_need(std::span<const SolidNumbers> solids);

/// The mix at a wetness, all per gram of dry mass.
struct WettedMix {
    MixWaterNeed need;
    Ratio wetness;                 ///< aimed at, or what it already has where that is more
    Ratio water;                   ///< to add; never below 0
    Ratio wetting_present;         ///< of liquids, films and water already in, as grams of wetting
    std::vector<Ratio> additives;  ///< grams of each
    Ratio wet_mass;                ///< all that is in the tub
    bool too_wet;                  ///< the liquids alone are more than the feel asks for
};

/// Solves for the water (and with it the doses by water and by wet mass).
/// water = M w(h) - wetting of liquids - films - already added; all per gram dry.
WettedMix wet(const MixNumbers& mix, Ratio wetness, Ratio already_added = 0.0);

/// How the wetted solids fill space, per gram of dry mass.
struct WetPacking {
    SpecificVolume solids;   ///< sum v', swollen grains
    SpecificVolume between;  ///< w_p, liquid between them
    Ratio packing;           ///< phi0, of the swollen grains poured
    SpecificVolume
        pressed_out{};       ///< the air that a squeeze presses out of the pores of what is springy; part of `solids`
    Ratio soft = 0.0;        ///< share of `solids` that is soaked pellets, which yield to a squeeze
    Ratio cup_weight = 1.0;  ///< of the mix
};

SpecificVolume dry_volume(const MixNumbers& mix);
WetPacking pack(const MixNumbers& mix, const WettedMix& wetted);

/// The grains of each solid of the mix, in its order, as they are once wetted; per gram of dry mass.
struct WetGrain {
    Ratio mass;              ///< g per gram of dry mass, as bought
    SpecificVolume swollen;  ///< per gram of its own
    Ratio growth;            ///< of its size
    Ratio inside;            ///< g of water in each gram of it, settled
};
std::vector<WetGrain> wet_grains(const MixNumbers& mix, const WettedMix& wetted);

/// The air that so much water inside leaves in the pores, per gram: 1/envelope - 1/skeleton less the water.
SpecificVolume pore_air(const SolidNumbers& solid, Ratio inside);

/// What a squeeze leaves of that air where the solid is springy. **Source**: ours.
inline constexpr double left_by_a_squeeze = 0.1;

/// The solids as they lie in that state: squeezed, without nine tenths of the air in the pores of what is springy.
/// **Source**: ours, so that a ball of 55 mm of liquidised bread weighs 75 to 90 g (common practice, no source).
SpecificVolume solids_in(const WetPacking& packing, MixState state);

/// Soaked pellets, pressed, leave no more room between them than this allows. **Source**: ours, so that a feeder of
/// 50 ml takes about 56 g of pressed soaked micros (common practice, no source).
inline constexpr double pressed_pellets = 0.90;

/// The volume of the wet mix in that state, never below (solids + between)/0.97. The state must be possible. Cupped, it
/// is that over what a cup was learnt to weigh.
SpecificVolume wet_volume(const WetPacking& packing, MixState state, Ratio wetness);

/// Share of the pores that liquid fills: w_p / (V - sum v'), at most 1.
Ratio saturation(const WetPacking& packing, SpecificVolume volume);

}  // namespace baitwright
