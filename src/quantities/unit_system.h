#pragma once

#include <string_view>

namespace baitwright {

/// What a person measures with: `both` has the two side by side.
enum class UnitSystem { both, metric, imperial };

/// The units that an answer is told in. Each of the four holds where something was typed in such a unit, and all of
/// them in the imperial system.
struct ShownUnits {
    UnitSystem system = UnitSystem::both;
    bool feet = false;        ///< depths, patches and drifts in feet and inches
    bool fahrenheit = false;  ///< temperatures in degF
    bool pints = false;       ///< volumes of bait in pints, or pints first
    bool ounces = false;      ///< masses in pounds and ounces, or these first
};

/// "metric", "imperial" or "both", whatever the case. Else InputError "unknown-units".
UnitSystem parse_unit_system(std::string_view word);

}  // namespace baitwright
