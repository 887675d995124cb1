#include "bait/beyond_range.h"

#include <cmath>
#include <type_traits>

#include "bait/ingredient_facts.h"
#include "quantities/amount_range.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/quantity_text.h"

namespace baitwright {

namespace {

/// What is finite in one unit need not be so in another.
std::string shown(double value) {
    return std::isfinite(value) ? number_text(value) : "beyond all numbers";
}

template <class D>
std::string amount_beyond(const char* what, Quantity<D> amount, Unit<D> unit, const char* symbol) {
    if (lies_in_range(amount)) return {};
    return std::string(what) + " is " + shown(amount.in(unit)) + " " + symbol + ", but must be " +
           range_text<Quantity<D>>();
}

template <class D>
std::string property_beyond(const PropertyFacts<D>& facts, const Property<Quantity<D>>& property) {
    if (!property.known()) return {};
    const double value = property.value.in(facts.unit), slack = 1e-9 * std::abs(facts.highest);
    const std::string unit = facts.symbol.empty() ? "" : " " + std::string(facts.symbol);
    if (!(value >= facts.lowest - slack && value <= facts.highest + slack))
        return "its " + std::string(facts.key) + " is " + shown(value) + unit + ", but must be from " +
               number_text(facts.lowest) + " to " + number_text(facts.highest) + unit;
    if (property.spread >= 0 && property.spread <= 3 * (1 + 1e-9)) return {};
    return "the spread of its " + std::string(facts.key) + " must be from 0 to 300 %";
}

template <class Amount>
bool is_amount_beyond(const Amount& amount) {
    if constexpr (std::is_same_v<Amount, Mass> || std::is_same_v<Amount, Volume>) return !lies_in_range(amount);
    return false;
}

void keep_first(std::string& found, std::string next) {
    if (found.empty()) found = std::move(next);
}

}  // namespace

std::string beyond_range(const Pack& pack) {
    std::string found;
    if (const Mass* mass = std::get_if<Mass>(&pack.size))
        found = amount_beyond("a pack of it", *mass, gram, "g");
    else
        found = amount_beyond("a pack of it", std::get<Volume>(pack.size), millilitre, "ml");
    if (pack.price && !lies_in_range(*pack.price))
        keep_first(found, "its price is " + money_text(*pack.price) + ", but must be " +
                              price_range_text(pack.price->currency()));
    return found;
}

std::string beyond_range(const Ingredient& ingredient) {
    std::string found;
    visit_properties(ingredient, [&](const auto& facts, const auto& property) {
        keep_first(found, property_beyond(facts, property));
    });
    visit_composition(ingredient.composition, [&](std::string_view key, const Property<Ratio>& share) {
        keep_first(found, property_beyond(PropertyFacts<NoDimension>{key, "%", percent, 0, 100, false, 0}, share));
    });
    for (const Pack& pack : ingredient.packs) keep_first(found, beyond_range(pack));
    if (ingredient.label_dose)
        std::visit(
            [&](auto each) {
                if (!lies_in_range(each))
                    keep_first(found, "the dose on its label must be " + range_text<decltype(each)>());
            },
            ingredient.label_dose->each);
    for (const auto& time : {ingredient.keeps.dry, ingredient.keeps.cold, ingredient.keeps.frozen})
        if (time) keep_first(found, amount_beyond("the time it keeps", *time, day, "d"));
    return found;
}

std::string beyond_range(const Recipe& recipe) {
    std::string found;
    const auto hold = [&](const auto& amount, const std::string& of) {
        if (std::visit([](const auto& fed) { return is_amount_beyond(fed); }, amount))
            keep_first(found, "the amount of " + in_quotes(of) + " must be " + range_text<Mass>() + ", or " +
                                  range_text<Volume>());
    };
    for (const Part& part : recipe.parts) hold(part.amount, part.of);
    for (const Dose& dose : recipe.doses) hold(dose.rate.each, dose.of);
    return found;
}

}  // namespace baitwright
