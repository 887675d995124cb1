#include "report/significant.h"

#include <fmt/format.h>

#include <cmath>
#include <stdexcept>

namespace baitwright {

namespace {

double to_significant(double value, int digits) {
    if (!std::isfinite(value)) throw std::logic_error("a number in the answer is not finite");
    if (value == 0) return value;
    const double scale = std::pow(10.0, digits - 1 - static_cast<int>(std::floor(std::log10(std::abs(value)))));
    constexpr double last_digits = 1e-12;  // what is a half but for these rounds up, in every form of the program alike
    return std::round(value * scale * (1 + last_digits)) / scale;
}

std::string with_thousands(std::string digits) {
    const auto point = digits.find('.');
    auto place = static_cast<std::ptrdiff_t>(point == std::string::npos ? digits.size() : point) - 3;
    const std::ptrdiff_t first = digits.front() == '-' ? 1 : 0;
    for (; place > first; place -= 3) digits.insert(static_cast<std::size_t>(place), ",");
    return digits;
}

}  // namespace

std::string significant(double value, int digits) {
    const double rounded = to_significant(value, digits);
    const int magnitude = rounded == 0 ? 0 : static_cast<int>(std::floor(std::log10(std::abs(rounded))));
    return with_thousands(fmt::format("{:.{}f}", rounded, std::max(0, digits - 1 - magnitude)));
}

}  // namespace baitwright
