#include "library/stock_name.h"

#include <algorithm>

#include "quantities/said_name.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

std::optional<StockName> find_stock_name(const std::string& name, Store& store) {
    const auto held = store.shed().find(name);
    auto ingredient = store.find_ingredient(name);
    if (held)
        return StockName{held->name, held->kind, held->kind == StockKind::mix ? std::nullopt : std::move(ingredient)};
    if (ingredient) return StockName{ingredient->name, StockKind::ingredient, ingredient};
    if (const auto recipe = store.find_recipe(name)) return StockName{recipe->name, StockKind::mix, std::nullopt};
    return std::nullopt;
}

std::vector<std::string> stock_names(Store& store) {
    std::vector<std::string> names = store.shed().names();
    for (std::string& name : store.ingredient_names()) names.push_back(std::move(name));
    for (std::string& name : store.recipe_names()) names.push_back(std::move(name));
    std::sort(names.begin(), names.end());  // what is in the shed is in the library too
    names.erase(std::unique(names.begin(), names.end()), names.end());
    return names;
}

}  // namespace

StockName stock_name(const std::string& word, Store& store) {
    if (auto found = find_stock_name(word, store)) return *std::move(found);
    const std::vector<std::string> names = stock_names(store);
    if (const auto meant = said_name(word, names).name)
        if (auto found = find_stock_name(*meant, store)) return *std::move(found);
    throw NotFound(fault_of_name(word, names,
                                 {"unknown-stock", "no ingredient or mix is called '" + word + "'",
                                  "see what is there with: baitwright stock; and: baitwright ingredient list"}));
}

bool is_stock_name(const std::string& word, Store& store) {
    return find_stock_name(word, store) || said_name(word, stock_names(store)).name;
}

}  // namespace baitwright
