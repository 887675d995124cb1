#pragma once

#include <cstdint>

#include "answers/mix/mix_answer.h"
#include "bait/resolved_mix.h"

namespace baitwright {

/// The 5, 50 and 95 % points of water and wet volume for a scaled mix, from the spreads of its ingredients:
/// A and the gap G = B - A of each part (the gap with B's spread), its bag's moisture, and what bags share, each
/// log-normal: the hand of the day (5 %) on every mark; on those not measured the hand in the long run (12 % with the
/// day's) and, where they are defaults from memory, an error of 9 %. What was measured is drawn with the day's alone. A
/// point of the water is 0 where that many need none. Water from 1,024 Sobol points. The wet volume, from 256, draws
/// loose and envelope density and size as well, at the same feel. The same seed gives the same bytes.
/// **Source**: method as in JCGM 101:2008 (from memory); quasi-random points as in `quasi_random.h`.
/// **Valid for**: an answer made by `scale_mix` from the same mix. **Test**: NumPy with a million draws, 0.5 %;
/// invented anglers, `tests/benchmark/coverage_of_water.py`.
MixDoubt doubt_of(const ResolvedMix& mix, const MixAnswer& answer, std::uint64_t seed);

/// The water of `doubt_of` alone, for so much of the mix with no water in it yet.
Range<Mass> water_to_wet(const ResolvedMix& mix, Ratio wetness, Mass dry, std::uint64_t seed);

/// A tub of so much of the dry mix, with so much water in it already, wetted on to a wetness where it is not that wet.
struct WettedTub {
    Mass dry_mass, water_in;
    Ratio wetness;
};
/// The wet volume of `doubt_of` alone, in a state that is possible at that wetness.
Range<Volume> volume_of_tub(const ResolvedMix& mix, const WettedTub& tub, MixState state, std::uint64_t seed);

/// How much of the rest goes in at a time, of so much water in a tub: a twentieth of it, to the kitchen's measure, at
/// the least 5 g.
Mass creeping_step(Mass water);

/// What surely is not too much yet: the lesser of the 5 % point and 70 % of the median, never below 0.
Mass first_pour(const Range<Mass>& water);

}  // namespace baitwright
