#pragma once

#include <string>

#include "answers/mix/mix_answer.h"

namespace baitwright {

/// "6 balls of 55 mm", "1 cup of 250 ml".
std::string portions_text(const PortionsAnswer& portions);

/// "about 95 g each", of one "about 95 g".
std::string mass_of_each(const PortionsAnswer& portions);

/// Of what it may be enough for: "5 to 7 balls", "1 ball".
std::string counted_range(const Range<Ratio>& count, const std::string& called);

/// What is done with the wetted mix: "Squeeze 6 balls of 55 mm, about 95 g each.", out of one tub or of so many.
std::string shape_text(const PortionsAnswer& portions, MixState state, int tubs);

}  // namespace baitwright
