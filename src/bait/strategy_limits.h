#pragma once

#include <string_view>

#include "quantities/quantity.h"
#include "quantities/temperature.h"
#include "quantities/units.h"

/// How far the numbers of a strategy go that are not said in `strategy_settings.h` alone. Files are held to it as they
/// are read, and so is what a store hands back. From common practice, no source: wider than anyone fishes.
namespace baitwright::strategy_limits {

inline constexpr Length deepest = 100.0 * metre;
inline constexpr double coldest_celsius = 0;
inline constexpr double warmest_celsius = 40;
inline constexpr Speed fastest_tow = 5.0 * metre_per_second;

inline constexpr double fastest_pace = 3600;                             ///< put-ins or fish an hour
inline constexpr double most_bites = 3600;                               ///< an hour
inline constexpr int most_fish = 1000;                                   ///< between two feeds
inline constexpr double fewest_slow_times = 0.1, most_slow_times = 100;  ///< that bites slow, in a session
inline constexpr int most_at_once = 1000;
inline constexpr double most_share = 1e6;
inline constexpr Time shortest_gap = 1.0 * second;
inline constexpr Time longest_gap = 24.0 * hour;

inline constexpr Length smallest_ball = 5.0 * millimetre;
inline constexpr Length largest_ball = 200.0 * millimetre;
inline constexpr std::string_view ball_range = "from 5 to 200 mm";
inline constexpr Volume smallest_vessel = 0.5 * millilitre;
inline constexpr Volume largest_vessel = 20.0 * litre;
inline constexpr std::string_view vessel_range = "from 0.5 ml to 20 l";

}  // namespace baitwright::strategy_limits
