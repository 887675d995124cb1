#include "answers/mix/dosed_name.h"

#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "quantities/fault.h"
#include "quantities/said_name.h"
#include "quantities/worded.h"

namespace baitwright {

std::string dosed_name(const Shelf& shelf, const std::string& word) {
    if (shelf.find_ingredient(word) || shelf.find_recipe(word)) return word;
    std::vector<std::string> names = shelf.ingredient_names();
    for (std::string& name : shelf.recipe_names()) names.push_back(std::move(name));
    if (const auto name = said_name(word, names).name) return *name;
    throw NotFound(
        fault_of_name(word, names,
                      {"unknown-additive", "no additive or mix is called '" + word + "'",
                       worded("see them with: baitwright ingredient list --kind liquid", "choose it from the list")}));
}

}  // namespace baitwright
