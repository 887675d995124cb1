#pragma once

#include <optional>
#include <string>
#include <vector>

#include "quantities/unit_system.h"
#include "questions/arguments.h"

namespace baitwright {

/// The units to answer in: the system that is usual ("metric", "imperial" or "both", which it is where none is said),
/// and whatever was typed in: "8ft", "brown crumb=2lb", "12x2in", "15ml in 0.5pt of lake water". US measures ask for
/// nothing, for no answer has them. Throws InputError "unknown-units" where the usual word is none of the three.
ShownUnits shown_units_of(const std::vector<std::string>& typed, const std::optional<std::string>& usual);

/// The same of what a person typed, words and flags, and always uses ("units").
ShownUnits shown_units_of(const Arguments& arguments);

}  // namespace baitwright
