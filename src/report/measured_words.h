#pragma once

#include <string>

#include "quantities/measured_text.h"
#include "quantities/quantity.h"

namespace baitwright {

/// With each amount in the units shown: "below 8 degC fish eat little", "below 46 degF fish eat little".
std::string shown_words(const MeasuredText& text);

/// The same for a reader that never changes its units: JSON.
std::string metric_words(const MeasuredText& text);

/// How fast water runs: "5 cm/s", "0.11 mph".
std::string shown_tow(Speed tow);

}  // namespace baitwright
