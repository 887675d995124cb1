#pragma once

#include <cstdint>

#include "answers/mix/doubtful_mix.h"
#include "answers/mix/mix_answer.h"

namespace baitwright {

/// The 5, 50 and 95 % points of the grams of wetting that the solids want per gram dry, M w(h), but none below `least`:
/// the wetting that is there already, below which no water is added.
/// What each of the Sobol points 1..count wants is affine in the factor that all marks share, U H + V with H
/// log-normal, so that factor is not drawn but integrated: P(wanted <= q) = mean of Phi(ln((q - V)/U) / sigma). That
/// takes most of the sampling error out. A point is found by Newton's steps, kept between what is known to be too low
/// and too high, until the error left is under a thousandth of the standard deviation.
/// **Source**: conditional Monte Carlo, as in L'Ecuyer & Lemieux 2002 (from memory). **Valid for**: at least one part,
/// wetness above 0. **Test**: NumPy with a million plain draws, within 0.5 %.
Range<Ratio> wanted_water_range(const DoubtfulMix& mix, Ratio wetness, Ratio least, std::size_t count,
                                std::uint64_t seed);

}  // namespace baitwright
