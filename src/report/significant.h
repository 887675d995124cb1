#pragma once

#include <string>

namespace baitwright {

/// The value to so many significant digits, without an exponent, thousands with a comma.
std::string significant(double value, int digits);

}  // namespace baitwright
