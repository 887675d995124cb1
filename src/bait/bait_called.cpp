#include "bait/bait_called.h"

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/ingredient_cautions.h"
#include "bait/raw_seed.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/units.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

/// Takes no water from a cupped hand: it is soaked under water, or goes in as it is.
bool goes_in_whole(const Ingredient& ingredient) {
    constexpr Length largest_wetted = 3.0 * millimetre;
    return ingredient.kind == IngredientKind::expander || has_caution(ingredient, "live") ||
           (ingredient.kind == IngredientKind::pellet && ingredient.diameter.value > largest_wetted);
}

/// What cannot be a mix of one, with what to do instead.
void refuse_as_mix(const Ingredient& ingredient, const Shelf& shelf, BaitUse use) {
    const std::string name = in_quotes(ingredient.name), typed = " \"" + ingredient.name + "\" ";
    if (ingredient.kind == IngredientKind::liquid)
        throw UsageError(
            "not-a-mix", name + " is a liquid: it goes into a mix",
            worded("how much of it: baitwright dose" + typed + "--amount 1kg", "add it to a mix by its dose"));
    if (is_raw_seed(ingredient)) throw UsageError(raw_seed_fault(ingredient, shelf));
    if (use == BaitUse::dropped || !goes_in_whole(ingredient)) return;
    if (has_caution(ingredient, "live"))
        throw UsageError("not-a-mix", name + " is not wetted: it goes in as it is",
                         worded("add it to a mix for once, as in --with \"" + ingredient.name + "=200 g\"",
                                "add it to a mix as a part"));
    throw UsageError("not-a-mix", name + " is soaked or pumped, not wetted like meal",
                     worded("type: baitwright soak" + typed + "--amount 500g", "look it up in Soak"));
}

/// One ingredient by itself: a kilogram of it, where no amount is asked for. Throws UsageError.
Recipe mix_of_one(const Ingredient& ingredient, const Shelf& shelf, BaitUse use) {
    refuse_as_mix(ingredient, shelf, use);
    Recipe recipe;
    recipe.name = ingredient.name;
    recipe.parts.push_back({ingredient.name, 1.0 * kilogram, Preparation::as_bought});
    if (goes_in_whole(ingredient) && find_feel(shelf.feels(), "dusty")) recipe.feel = "dusty";  // nothing binds it
    return recipe;
}

/// A hint that names nothing which may be meant, and tells nothing of what became of it.
bool points_elsewhere(const std::string& hint) {
    return hint.starts_with("see ");
}

}  // namespace

Recipe bait_called(const std::string& word, const Shelf& shelf, BaitUse use) {
    if (auto recipe = shelf.find_recipe(word)) return *std::move(recipe);
    if (const auto ingredient = shelf.find_ingredient(word)) return mix_of_one(*ingredient, shelf, use);
    try {
        return shelf.recipe(word);
    } catch (const NotFound& no_mix) {
        try {
            return mix_of_one(shelf.ingredient(word), shelf, use);
        } catch (const NotFound& no_ingredient) {
            std::vector<Fault> faults = no_ingredient.faults();
            if (points_elsewhere(faults.front().hint)) throw no_mix;
            faults.front().code = no_mix.faults().front().code;
            faults.front().message = "no mix or ingredient is called " + in_quotes(word);
            throw Error(FaultClass::not_found, std::move(faults));
        }
    }
}

}  // namespace baitwright
