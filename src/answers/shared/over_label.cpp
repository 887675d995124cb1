#include "answers/shared/over_label.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "bait/amount.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// Two digits, rounded down: what is said to be allowed must be.
double rounded_down(double amount) {
    if (!(amount > 0)) return 0;
    const double step = std::pow(10.0, std::floor(std::log10(amount)) - 1);
    return std::floor(amount / step * (1 + 1e-12)) * step;
}

std::string times_of_label(Ratio of_label) {
    const auto times = double(of_label);
    if (times < 2) return fmt::format("{:.0f} % of", std::max(101.0, std::round(100 * times)));
    return times < 9.5 ? fmt::format("{:.1f} times", times) : fmt::format("{:.0f} times", times);
}

std::string allowed_text(double amount, const char* unit) {
    const double most = rounded_down(amount);
    if (most < 0.01) return fmt::format("less than 0.01 {}", unit);
    return most < 10 ? fmt::format("{:.2g} {}", most, unit) : fmt::format("{:.0f} {}", most, unit);
}

std::string most_allowed(const Ingredient& additive, Mass most) {
    return additive.kind == IngredientKind::liquid
               ? allowed_text((most / measured_density(additive)).in(millilitre), "ml")
               : allowed_text(most.in(gram), "g");
}

}  // namespace

Warning over_label(const Ingredient& additive, Mass mass, Ratio of_label) {
    return {
        "over-label",
        fmt::format("the {} comes to {} the label's most, {}: at most {} here", additive.name, times_of_label(of_label),
                    dose_rate_text(*additive.label_dose), most_allowed(additive, mass / double(of_label))),
        true};
}

}  // namespace baitwright
