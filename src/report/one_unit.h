#pragma once

#include <string>
#include <vector>

#include "quantities/quantity.h"

/// Estimated lengths that stand in one sentence or one column, in one unit; in feet where lengths are told in them.
namespace baitwright {

enum class LengthUnit { centimetres, metres };

/// Centimetres where one of them is too short for metres and none is a metre long; else metres.
LengthUnit one_unit(const std::vector<Length>& lengths);

/// "6 cm", "13 cm"; "0.06 m", "0.55 m", "1.2 m".
std::string shown_length(Length length, LengthUnit unit);
/// "4 to 20 cm", "0.08 to 1.7 m".
std::string shown_length(Length low, Length high, LengthUnit unit);

}  // namespace baitwright
