#include "library/before_learning.h"

#include <algorithm>

#include "bait/ingredient_completion.h"
#include "files/library_file.h"

namespace baitwright {

BeforeLearning::BeforeLearning(const Store& store, const std::string& name) {
    for (const RetiredEntry& entry : store.retired("ingredient", name)) {
        LibraryFile file = read_library_file(entry.text, {});
        if (file.ingredients.size() == 1) versions_.push_back(std::move(file.ingredients.front()));
    }
    std::reverse(versions_.begin(), versions_.end());
    if (auto shipped = store.find_usual(name)) versions_.push_back(*std::move(shipped));
}

std::optional<Ingredient> own_before_learning(const Store& store, const std::string& name) {
    auto own = store.find_ingredient(name);
    if (!own) return std::nullopt;
    const Origin absorption = own->absorption.source.origin, slump = own->slump.source.origin;
    const bool is_learnt = absorption == Origin::learned || slump == Origin::learned;
    if (!is_learnt || absorption == Origin::measured || slump == Origin::measured) return std::nullopt;
    const BeforeLearning before(store, name);
    for (auto mark : {&Ingredient::absorption, &Ingredient::slump}) {
        auto value = before.value(mark);
        if (!value || value->source.origin == Origin::measured) return std::nullopt;
        (*own).*mark = *std::move(value);
    }
    complete(*own);
    return own;
}

}  // namespace baitwright
