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

Time strength(Ratio wetness) {
    static const std::array<Knot, 7> log_seconds{{{0.70, std::log(0.1)},
                                                  {0.95, std::log(3.0)},
                                                  {1.20, std::log(90.0)},
                                                  {1.40, std::log(400.0)},
                                                  {1.45, std::log(400.0)},
                                                  {1.70, std::log(45.0)},
                                                  {2.10, 0.0}}};
    if (wetness >= log_seconds.back().x) return {};
    return std::exp(piecewise_linear(log_seconds, wetness)) * second;
}

Time holds(Hold how, Ratio wetness, Length diameter, Ratio binder, Squeeze squeeze) {
    constexpr std::array<double, 3> by_squeeze{0.5, 1, 2};
    constexpr double unpressed = 0.020;
    const double size = diameter / (60.0 * millimetre);
    const double grip = how == Hold::heaped ? unpressed * std::exp(0.5 * binder)
                                            : by_squeeze[static_cast<std::size_t>(squeeze)] * std::exp(double(binder));
    return grip * size * size * strength(wetness);
}

Ratio bound_share(Ratio wetness, Ratio binder) {
    const double strong = strength(wetness).in(second)*std::exp(double(binder));
    return strong / (strong + 3);
}

Length diameter_of(Volume volume) {
    return std::cbrt(volume.si() * 6 / std::numbers::pi) * metre;
}

}  // namespace baitwright
