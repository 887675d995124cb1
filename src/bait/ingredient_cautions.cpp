#include "bait/ingredient_cautions.h"

#include <algorithm>
#include <utility>

#include "bait/caution.h"

namespace baitwright {

namespace {

/// Grains that one can cook, or has cooked.
bool is_whole(IngredientKind kind) {
    return kind == IngredientKind::seed || kind == IngredientKind::particle;
}

}  // namespace

bool has_caution(const Ingredient& ingredient, std::string_view word) {
    return std::find(ingredient.cautions.begin(), ingredient.cautions.end(), word) != ingredient.cautions.end();
}

std::vector<std::string> caution_words(const Ingredient& ingredient) {
    std::vector<std::string> words;
    add_caution_words(ingredient, words);
    return words;
}

void add_caution_words(const Ingredient& ingredient, std::vector<std::string>& words) {
    const bool whole = is_whole(ingredient.kind);
    if (whole && ingredient.cautions.empty()) words.push_back(allergens_not_known(ingredient.name));
    bool told = false;
    for (const std::string& word : ingredient.cautions) {
        if (word == no_allergens) continue;
        const bool of_seed = word == "pulse" || word == "hard seed" || word == "raw meal";
        if (whole || !of_seed)
            words.push_back(word);
        else if (!std::exchange(told, true))
            words.emplace_back("raw meal");
    }
}

}  // namespace baitwright
