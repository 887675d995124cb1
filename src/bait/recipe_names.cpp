#include "bait/recipe_names.h"

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/strategy.h"
#include "bait/suggesting_shelf.h"
#include "quantities/suggestion.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

std::string see_all() {
    return worded("see what there is with: baitwright ingredient list", "choose it from the list");
}

std::string hint_among(const std::string& name, const std::vector<std::string>& names,
                       const std::string& otherwise = see_all()) {
    const std::string hint = near_names_hint(name, names);
    return hint.empty() ? otherwise : hint;
}

}  // namespace

Fault unknown_part(const std::string& of, const std::string& subject, const Shelf& shelf) {
    std::vector<std::string> names = shelf.ingredient_names();
    for (std::string& name : shelf.recipe_names()) names.push_back(std::move(name));
    return {"unknown-ingredient", "no ingredient or mix is called '" + of + "'", hint_among(of, names), subject};
}

Fault unknown_additive(const std::string& of, const std::string& subject, const Shelf& shelf) {
    return {"unknown-ingredient", "no additive is called '" + of + "'", hint_among(of, shelf.ingredient_names()),
            subject};
}

Fault unknown_feel(const std::string& feel, const Shelf& shelf, const std::string& subject) {
    std::vector<std::string> names;
    std::string listed;
    for (const Feel& known : shelf.feels()) {
        names.push_back(known.name);
        listed += (listed.empty() ? "" : ", ") + known.name;
    }
    return {"unknown-feel", "no feel is called '" + feel + "'", hint_among(feel, names, "the feels are: " + listed),
            subject};
}

std::vector<Fault> unknown_names(const Recipe& recipe, const Shelf& shelf) {
    std::vector<Fault> faults;
    const SuggestingShelf suggesting(shelf);
    const std::vector<Feel> feels = shelf.feels();
    if (!recipe.feel.empty() && !find_feel(feels, recipe.feel)) faults.push_back(unknown_feel(recipe.feel, shelf));
    for (std::size_t i = 0; i < recipe.parts.size(); ++i) {
        const std::string& of = recipe.parts[i].of;
        if (!of.empty() && !shelf.find_ingredient(of) && !shelf.find_recipe(of))
            faults.push_back(unknown_part(of, "part " + std::to_string(i + 1), suggesting.after(faults.size())));
    }
    for (std::size_t i = 0; i < recipe.doses.size(); ++i) {
        const std::string& of = recipe.doses[i].of;
        if (!of.empty() && !shelf.find_ingredient(of))
            faults.push_back(unknown_additive(of, "dose " + std::to_string(i + 1), suggesting.after(faults.size())));
    }
    return faults;
}

}  // namespace baitwright
