#include "report/hand_measure.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "quantities/listed.h"
#include "quantities/units.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

/// "1/4", "3/4", "1", "1 1/2", "2": to quarters below one, then to halves.
std::string spoken_fraction(double number) {
    const double step = number < 0.875 ? 0.25 : 0.5, rounded = std::max(step, step * std::round(number / step));
    const double whole = std::floor(rounded), rest = rounded - whole;
    const char* part = rest == 0.25 ? "1/4" : rest == 0.5 ? "1/2" : rest == 0.75 ? "3/4" : "";
    if (whole == 0) return part;
    return fmt::format("{:.0f}{}{}", whole, rest > 0 ? " " : "", part);
}

std::string counted_measure(double number, const char* one, const char* several) {
    const std::string count = spoken_fraction(number);
    return "about " + count + " " + (count == "1" || number < 0.875 ? one : several);
}

std::string grains_by_hand(double grains) {
    const double count = std::max(1.0, std::round(grains));
    return fmt::format("about {:.0f} grain{}", count, count > 1 ? "s" : "");
}

std::string pinches_by_hand(double grams) {
    const double pinches = grams / pinch_g;
    if (pinches < 0.25) return "less than half a pinch";
    if (pinches < 0.75) return "about half a pinch";
    const double count = std::round(pinches);
    return fmt::format("about {:.0f} pinch{}", count, count > 1 ? "es" : "");
}

std::string powder_by_hand(Mass mass, Volume volume) {
    const double teaspoons = volume.in(millilitre) / teaspoon_ml;
    if (teaspoons < 0.2) return pinches_by_hand(mass.in(gram));
    return counted_measure(teaspoons, "level teaspoon", "level teaspoons");
}

std::string liquid_by_hand(Volume volume) {
    const double millilitres = volume.in(millilitre);
    if (millilitres < 1) {
        const double drops = std::max(1.0, std::round(millilitres * drops_in_a_millilitre));
        return fmt::format("about {:.0f} drop{}", drops, drops > 1 ? "s" : "");
    }
    if (millilitres < 0.45 * teaspoon_ml) return counted_measure(millilitres / teaspoon_ml, "teaspoon", "teaspoons");
    return counted_measure(millilitres / teaspoon_ml, "cap", "caps") + " (5 ml a cap)";
}

}  // namespace

HandAmount hand_amount(const PartAnswer& part) {
    return {part.name, part.mass, part.volume, part.free_offerings, false};
}

HandAmount hand_amount(const AdditiveAnswer& additive) {
    return {additive.name, additive.mass, additive.volume, 0, additive.liquid};
}

HandAmount hand_amount(const DoseLine& line) {
    return {line.name, line.mass, line.volume, 0, line.liquid};
}

HandAmount hand_amount(const PlannedTotal& total) {
    return {total.name, total.mass, total.volume, total.grains, total.liquid};
}

HandAmount hand_amount(const PlannedSoak& soak) {
    return {soak.name, soak.dry, {}, soak.grains, false};
}

HandAmount hand_amount(const SteepedAdditive& additive) {
    return {additive.name, additive.mass, additive.volume, 0, additive.liquid};
}

std::string hand_measure(const HandAmount& amount) {
    if (!(amount.mass > Mass{})) return {};
    if (amount.liquid) return amount.volume.in(millilitre) < least_jugged_ml ? liquid_by_hand(amount.volume) : "";
    if (!(amount.mass.in(gram) < least_weighed_g)) return {};
    if (amount.grains > 0 && amount.grains <= most_counted) return grains_by_hand(amount.grains);
    return powder_by_hand(amount.mass, amount.volume);
}

std::string hand_measure_behind(const HandAmount& amount) {
    const std::string text = hand_measure(amount);
    return text.empty() ? text : ", " + text;
}

std::string hand_measures(const std::vector<HandAmount>& amounts) {
    std::vector<std::string> told;
    told.reserve(amounts.size());
    for (const HandAmount& amount : amounts)
        if (std::string text = hand_measure(amount); !text.empty()) {
            text += " of ";
            told.push_back(text + amount.name);
        }
    return told.empty() ? std::string() : sentence(joined(told, "; "));
}

std::string hand_measures(const std::vector<PlannedTotal>& totals) {
    std::vector<HandAmount> amounts;
    amounts.reserve(totals.size());
    for (const PlannedTotal& total : totals) amounts.push_back(hand_amount(total));
    return hand_measures(amounts);
}

}  // namespace baitwright
