#pragma once

#include <rapidcheck.h>

#include <string>
#include <vector>

#include "bait/caution.h"
#include "bait/ingredient_facts.h"
#include "quantities/units.h"

/// Ingredients of every kind with whatever they may hold, for tests that write and read them back. To be called inside
/// `rc::check`.
namespace baitwright {

/// Any number from low to high, both included.
inline double number_between(double low, double high) {
    const auto step = *rc::gen::inRange<int>(0, 1000001);
    return low + (high - low) * (static_cast<double>(step) / 1e6);
}

inline std::string any_text() {
    const auto letters = rc::gen::element<std::string>("a", "Z", " ", "é", "濡", "😀", "\"", "\\", "'", "\n", "\t", "\r",
                                                       "#", "=", "]", "½", "%");
    std::string text;
    for (const std::string& letter : *rc::gen::container<std::vector<std::string>>(letters)) text += letter;
    return text;
}

inline std::string any_line() {
    std::string line;
    for (const char c : any_text())
        if (c != '\n' && c != '\t' && c != '\r') line += c;
    return line;
}

inline std::string any_name() {
    return "n" + any_line() + "e";
}

inline Source any_source() {
    const Origin origin = *rc::gen::element(Origin::standing, Origin::published, Origin::learned, Origin::measured);
    std::string detail = any_line();
    while (!detail.empty() && detail.front() == ' ') detail.erase(0, 1);
    return {origin, detail};
}

template <class D>
Quantity<D> between(double low, double high, Unit<D> unit) {
    return number_between(low, high) * unit;
}
inline Ratio between(double low, double high, Unit<NoDimension> unit) {
    return number_between(low, high) * unit.in_si;
}

inline std::variant<Mass, Volume> any_amount() {
    const double number = number_between(0.001, 10000);
    return *rc::gen::arbitrary<bool>() ? std::variant<Mass, Volume>(number * kilogram) : number * litre;
}

inline DoseRate any_rate() {
    const auto basis = *rc::gen::element(DoseBasis::per_kg_dry, DoseBasis::per_kg_wet, DoseBasis::per_litre_water,
                                         DoseBasis::per_pint_pellets, DoseBasis::share_of_dry);
    if (basis == DoseBasis::share_of_dry) return {basis, number_between(0.001, 1) * kilogram};
    return {basis, any_amount()};
}

inline std::optional<Time> any_time() {
    if (*rc::gen::arbitrary<bool>()) return std::nullopt;
    const auto unit = *rc::gen::element(minute.in_si, hour.in_si, day.in_si, month.in_si);
    return Time::from_si(*rc::gen::element(1.0, 3.0, 9.0, number_between(0.01, 100)) * unit);
}

inline std::vector<Pack> any_packs() {
    std::vector<Pack> packs(static_cast<std::size_t>(*rc::gen::inRange(0, 3)));
    for (Pack& pack : packs) {
        pack.size = any_amount();
        if (*rc::gen::arbitrary<bool>())
            pack.price = Money(*rc::gen::inRange(0, 100000),
                               currency_named(*rc::gen::element<std::string>("GBP", "EUR", "CHF", "JPY", "KWD")));
        if (*rc::gen::arbitrary<bool>()) pack.on = parse_date("2024-02-29");
        if (*rc::gen::arbitrary<bool>()) pack.shop = any_name();
    }
    return packs;
}

/// Each property that the kind may have, stated or not; no two of them at odds.
inline void state_properties(Ingredient& ingredient) {
    visit_properties(ingredient, [&](const auto& facts, auto& property) {
        const Need need = need_of(ingredient.kind, facts.key);
        if (need == Need::absent || (need == Need::optional && *rc::gen::arbitrary<bool>())) return;
        property = {between(facts.lowest, facts.highest, facts.unit), number_between(0, 3), any_source()};
    });
    ingredient.slump.value = ingredient.absorption.value + 5;
    ingredient.loose_density.value = number_between(20, 500) * gram_per_litre;
    ingredient.envelope_density.value = number_between(0.6, 3) * gram_per_millilitre;
    ingredient.skeleton_density.value = number_between(3, 8) * gram_per_millilitre;
}

inline Ingredient any_ingredient(int number) {
    Ingredient ingredient;
    ingredient.name = any_name() + std::to_string(number);
    ingredient.kind = static_cast<IngredientKind>(*rc::gen::inRange(0, 8));
    state_properties(ingredient);
    visit_composition(ingredient.composition, [&](std::string_view, Property<Ratio>& share) {
        if (*rc::gen::arbitrary<bool>()) share = {number_between(0, 0.25), number_between(0, 3), any_source()};
    });
    ingredient.colour = any_line();
    if (ingredient.kind == IngredientKind::liquid)
        ingredient.solute = *rc::gen::element<std::string>("", "glycerol", "sucrose", "salt");
    if (*rc::gen::arbitrary<bool>()) ingredient.label_dose = any_rate();
    ingredient.packs = any_packs();
    ingredient.keeps = {any_time(), any_time(), any_time()};
    for (const Caution& caution : all_cautions())
        if (*rc::gen::inRange(0, 4) == 0) ingredient.cautions.emplace_back(caution.word);
    ingredient.note = any_text();
    return ingredient;
}

}  // namespace baitwright
