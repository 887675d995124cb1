#pragma once

#include "quantities/units.h"

/// How long the hands are busy with each job of the preparation, and how much one bucket takes.
/// **Source**: common practice, no source. **Valid for**: a practised pair of hands at a bench.
namespace baitwright {

inline constexpr Time weigh_a_part = 1.0 * minute;
inline constexpr Time stir_dry = 2.0 * minute;
inline constexpr Time pour_on_pellets = 1.0 * minute;
inline constexpr Time drain_pellets = 2.0 * minute;
inline constexpr Time wet_a_bucket = 5.0 * minute;  ///< the first wetting, stirring all the while
inline constexpr Time riddle_a_bucket = 5.0 * minute;
inline constexpr Time finish_a_bucket = 4.0 * minute;   ///< the second wetting, by feel
inline constexpr Time stir_in_a_bucket = 2.0 * minute;  ///< live, cooked and soaked feed, at the very end
inline constexpr Time settle = 5.0 * minute;            ///< between the second wetting and the first cup
inline constexpr Time shape_a_ball = 0.5 * minute;
inline constexpr Time take_out_to_thaw = 1.0 * minute;
inline constexpr Time load_the_barrow = 10.0 * minute;
inline constexpr Time feel_it_again = 5.0 * minute;  ///< at the water, after the way there

inline constexpr Mass full_bucket = 5.0 * kilogram;  ///< wet; more is hard to stir

/// The evening before: at nine by the clock. Where there is no clock it is that far back only to keep its jobs in
/// order: no moment of it is told.
inline constexpr Time evening_clock = 21.0 * hour;
inline constexpr Time evening_without_clock = 12.0 * hour;

}  // namespace baitwright
