#pragma once

#include <rapidcheck.h>

#include <iterator>

#include "bait/draft_shelf.h"
#include "bait/resolve_mix.h"

/// Random mixes of the draft ingredients, drawn inside a RapidCheck property.
namespace baitwright::draft {

/// What a random mix may hold besides solids as bought.
enum class Extras { none, all };

inline double drawn(int low, int high, double each) {
    return *rc::gen::inRange(low, high + 1) * each;
}

inline const SolidRow& drawn_solid() {
    return solids[*rc::gen::inRange<std::size_t>(0, std::size(solids))];
}

inline Dose drawn_dose() {
    const std::string of(liquids[*rc::gen::inRange<std::size_t>(0, std::size(liquids))].name);
    switch (*rc::gen::inRange(0, 6)) {
        case 0:
            return {of, {DoseBasis::per_kg_dry, drawn(1, 60, 1) * millilitre}};
        case 1:
            return {of, {DoseBasis::per_kg_wet, drawn(1, 60, 1) * gram}};
        case 2:
            return {of, {DoseBasis::per_litre_water, drawn(1, 90, 1) * millilitre}};
        case 3:
            return {"betaine powder", {DoseBasis::per_kg_wet, drawn(1, 30, 1) * gram}};
        case 4:
            return {"salt", {DoseBasis::share_of_dry, drawn(1, 30, 1) * gram}};
        default:
            return {"betaine powder", {DoseBasis::per_litre_water, drawn(1, 30, 1) * gram}};
    }
}

/// One to six parts by share, the first of which takes water.
inline Recipe drawn_recipe(Extras extras) {
    Recipe recipe;
    recipe.name = "random mix";
    const SolidRow& first = drawn_solid();
    RC_PRE(first.absorption > 0);
    recipe.parts.push_back({std::string(first.name), Share{drawn(4, 20, 1)}});
    for (int more = *rc::gen::inRange(0, 6); more > 0; --more) {
        const SolidRow& row = drawn_solid();
        Part part{std::string(row.name), Share{drawn(1, 10, 1)}};
        if (extras == Extras::all && row.kind == IngredientKind::pellet && *rc::gen::arbitrary<bool>())
            part.prepare = Preparation::soaked;
        recipe.parts.push_back(part);
    }
    if (extras == Extras::none) return recipe;
    if (*rc::gen::arbitrary<bool>()) recipe.parts.push_back({"molasses", Share{drawn(1, 10, 0.05)}});
    for (int more = *rc::gen::inRange(0, 4); more > 0; --more) recipe.doses.push_back(drawn_dose());
    return recipe;
}

inline ResolvedMix drawn_mix(Extras extras) {
    return resolve(drawn_recipe(extras), shelf());
}

}  // namespace baitwright::draft
