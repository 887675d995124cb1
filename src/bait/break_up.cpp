#include "bait/break_up.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "physics/piecewise_linear.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

std::optional<Squeeze> find_squeeze(std::string_view name) {
    const std::string folded = folded_name(name);
    for (std::size_t i = 0; i < squeeze_names.size(); ++i)
        if (squeeze_names[i] == folded) return static_cast<Squeeze>(i);
    return std::nullopt;
}

Ratio binder_sum(std::span<const BinderShare> parts) {
    double sum = 0;
    for (const BinderShare& part : parts) sum += part.share * part.binder;
    return sum;
}

Time ball_holds(Ratio wetness, Length diameter, Ratio binder, Squeeze squeeze) {
    static const std::array<Knot, 3> log_seconds{
        {{0.95, std::log(3.0)}, {1.20, std::log(90.0)}, {1.40, std::log(400.0)}}};
    constexpr std::array<double, 3> by_squeeze{0.5, 1, 2};
    const double size = diameter / (60.0 * millimetre);
    return std::exp(piecewise_linear(log_seconds, wetness) + binder) * size * size *
           by_squeeze[static_cast<std::size_t>(squeeze)] * second;
}

Ratio cup_breaks_after(Ratio wetness) {
    constexpr std::array<Knot, 5> diameters{{{0.9, 1}, {1.2, 4}, {1.6, 7}, {1.85, 7}, {2, 2}}};
    return piecewise_linear(diameters, wetness);
}

Length diameter_of(Volume volume) {
    return std::cbrt(volume.si() * 6 / std::numbers::pi) * metre;
}

}  // namespace baitwright
