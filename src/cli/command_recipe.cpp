#include "cli/commands.h"

#include "answers/mix/odd_mix.h"
#include "bait/resolve_mix.h"
#include "cli/checked.h"
#include "cli/old_versions.h"
#include "cli/result_formats.h"
#include "files/library_text.h"
#include "library/named.h"
#include "library/searched.h"
#include "report/entry_replies.h"

namespace baitwright {

namespace {

CommandResult list_recipes(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<Recipe> recipes;
    for (const std::string& name : shelf->recipe_names()) recipes.push_back(shelf->recipe(name));
    return given(arguments, recipe_list_reply(those_with(arguments.words(), std::move(recipes))));
}

CommandResult show_recipe(const Arguments& arguments, const Surroundings& around) {
    if (arguments.has("--old")) return old_versions(arguments, around, EntryKind::mix);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Recipe recipe = named_recipe(arguments.words().front(), *shelf).value;
    if (arguments.has("--toml")) return as_toml(arguments, toml_text(recipe));
    return given(arguments, recipe_reply(recipe));
}

CommandResult check_recipe(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    return checked(arguments, "recipe", [&](const std::string& given) {
        const Named<Recipe> named = named_recipe(given, *shelf);
        const ResolvedMix mix = with_places(named, [&] { return resolve(named.value, named.shelf()); });
        return oddities_of(mix, named.shelf().feels());
    });
}

}  // namespace

CommandSpec command_recipe_list() {
    return {"recipe list",
            "the mixes of the library",
            {{"WORD", "only those with these words in name, feel or notes", true, false}},
            {{"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            list_recipes,
            "baitwright recipe list\nbaitwright recipe list --csv"};
}

CommandSpec command_recipe_show() {
    return {"recipe show",
            "a mix as it is written down, and what it is for",
            {{"RECIPE", "the mix: its name, a TOML file, or - for standard input"}},
            show_flags(),
            show_recipe,
            R"(baitwright recipe show "silt bed"
baitwright recipe show my-mix.toml)"};
}

CommandSpec command_recipe_check() {
    return {"recipe check",
            "everything that is wrong with a mix, before you stand at the tub",
            {{"RECIPE", "the mix: its name, a TOML file, or - for standard input"}},
            {},
            check_recipe,
            R"(baitwright recipe check my-mix.toml
baitwright recipe check "silt bed")"};
}

}  // namespace baitwright
