#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "answers/asking.h"
#include "bait/resolve_mix.h"

/// The mixes of `tests/reference/water_mixes.json`, that NumPy was asked about.
namespace baitwright::draft {

inline Ingredient grain(const std::string& name, IngredientKind kind) {
    Ingredient i;
    i.name = name;
    i.kind = kind;
    i.loose_density = stated(500.0 * gram_per_litre);
    return i;
}

inline Ingredient liquid(const nlohmann::json& from) {
    Ingredient i;
    i.name = from["name"];
    i.kind = IngredientKind::liquid;
    i.density = stated(1.0 * gram_per_millilitre);
    i.water = stated<Ratio>(0.5);
    i.wetting = stated(from["wetting_per_gram"].get<double>() * gram_per_millilitre);
    return i;
}

inline Ingredient thirsty(const nlohmann::json& part) {
    Ingredient i = grain(part["name"].get<std::string>() + ", dry", IngredientKind::base);
    i.absorption = stated<Ratio>(part["absorption"].get<double>(), part["absorption_spread"]);
    i.slump = stated<Ratio>(part["slump"].get<double>(), part["slump_spread"]);
    i.moisture = stated<Ratio>(part["moisture"].get<double>(), part["moisture_spread"]);
    if (part.contains("published")) i.absorption.source = i.slump.source = {Origin::published, "a table"};
    return i;
}

/// The bag as a person measured it.
inline Ingredient measured(Ingredient i, const nlohmann::json& found) {
    for (const auto& [key, mark] : {std::pair("absorption", &i.absorption), std::pair("slump", &i.slump)})
        if (found.contains(key))
            *mark = {found[key].get<double>(), found["spread"].get<double>(), {Origin::measured, "a test"}};
    return i;
}

/// One of the mixes that NumPy was asked about.
inline ResolvedMix mix_of_json(const nlohmann::json& mix) {
    MemoryShelf shelf;
    shelf.put(feels());
    Recipe recipe;
    recipe.name = mix["name"];
    double total = 0;
    for (const auto& part : mix["parts"]) {
        Ingredient i = thirsty(part);
        shelf.put(i);
        if (part.contains("measured")) shelf.put(measured(i, part["measured"]));
        recipe.parts.push_back({i.name, part["weight"].get<double>() * kilogram});
        total += part["weight"].get<double>();
    }
    for (const auto& part : mix["carried"]) {
        const bool soaked = part["soaked"];
        Ingredient i = grain(part["name"], soaked ? IngredientKind::pellet : IngredientKind::particle);
        if (soaked) {
            i.diameter = stated(4.0 * millimetre);
            i.absorption = stated<Ratio>(0.35);
            i.capacity = stated<Ratio>(1.0);
        }
        shelf.put(i);
        recipe.parts.push_back(
            {i.name, part["weight"].get<double>() * kilogram, soaked ? Preparation::soaked : Preparation::as_bought});
        total += part["weight"].get<double>();
    }
    for (const auto& part : mix["liquids"]) {
        shelf.put(liquid(part));
        recipe.parts.push_back({part["name"], total * part["grams_per_gram_dry"].get<double>() * kilogram});
    }
    for (const auto& dose : mix["doses"]) {
        shelf.put(liquid(dose));
        recipe.doses.push_back({dose["name"], parse_dose_rate(std::to_string(dose["grams"].get<int>()) + " g " +
                                                              dose["basis"].get<std::string>())});
    }
    return resolve(recipe, shelf);
}

}  // namespace baitwright::draft
