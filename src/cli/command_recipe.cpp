#include "cli/command_recipe.h"

#include "bait/resolved_mix.h"
#include "report/fault_text.h"
#include "report/recipe_report.h"
#include "shelf/recipe_argument.h"

namespace baitwright {

namespace {

CommandResult list(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<Recipe> recipes;
    for (const std::string& name : shelf->recipe_names()) recipes.push_back(shelf->recipe(name));
    return {arguments.has("--json") ? json_text(recipe_list_json(recipes)) : recipe_list_text(recipes), 0};
}

CommandResult show(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Recipe recipe = recipe_argument(arguments.words().front(), *shelf).recipe;
    return {arguments.has("--json") ? json_text(recipe_json(recipe)) : recipe_text(recipe), 0};
}

CommandResult check(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const std::string& word = arguments.words().front();
    std::vector<Fault> faults;
    try {
        const NamedRecipe named = recipe_argument(word, *shelf);
        with_places(named, [&] { return resolve(named.recipe, named.shelf()); });
    } catch (const InputError& error) {
        faults = error.faults();
    }
    if (arguments.has("--json")) {
        Json json = json_record("recipe check", {});
        json["recipe"] = word;
        json["faults"] = json_of_faults(faults)["errors"];
        return {json_text(json), faults.empty() ? 0 : 1};
    }
    return {faults.empty() ? word + ": nothing wrong found\n" : fault_text(faults), faults.empty() ? 0 : 1};
}

}  // namespace

CommandSpec command_recipe_list() {
    return {"recipe list", "the mixes of the library", {}, {}, list, "baitwright recipe list"};
}

CommandSpec command_recipe_show() {
    return {"recipe show", "a mix as it is written down, and what it is for",
            {{"RECIPE", "the mix: its name, a TOML file, or - for standard input"}}, {}, show,
            "baitwright recipe show \"silt bed\""};
}

CommandSpec command_recipe_check() {
    return {"recipe check", "everything that is wrong with a mix, before you stand at the tub",
            {{"RECIPE", "the mix: its name, a TOML file, or - for standard input"}}, {}, check,
            "baitwright recipe check my-mix.toml"};
}

}  // namespace baitwright
