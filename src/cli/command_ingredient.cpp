#include "cli/commands.h"

#include "cli/old_versions.h"
#include "cli/result_formats.h"
#include "files/ingredient_csv.h"
#include "files/library_text.h"
#include "library/searched.h"
#include "quantities/fault.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"
#include "report/entry_replies.h"

namespace baitwright {

namespace {

IngredientKind read_kind(const std::string& text) {
    const std::vector<std::string> names(ingredient_kind_names.begin(), ingredient_kind_names.end());
    const SaidName said = said_name(text, names);
    for (std::size_t i = 0; i < names.size(); ++i)
        if (said.name == names[i]) return static_cast<IngredientKind>(i);
    throw InputError(fault_of_name(
        text, names,
        {"unknown-kind", "'" + text + "' is not a kind of ingredient", "the kinds are: " + joined(names, ", ")}));
}

CommandResult list_ingredients(const Arguments& arguments, const Surroundings& around) {
    std::optional<IngredientKind> kind;
    if (const auto text = arguments.value("--kind")) kind = flag_value("--kind", [&] { return read_kind(*text); });
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const std::vector<std::string> names = shelf->ingredient_names();
    std::vector<Ingredient> ingredients;
    ingredients.reserve(names.size());
    for (const std::string& name : names) {
        Ingredient ingredient = shelf->ingredient(name);
        if (!kind || ingredient.kind == *kind) ingredients.push_back(std::move(ingredient));
    }
    ingredients = those_with(arguments.words(), std::move(ingredients));
    if (arguments.has("--csv")) return {csv_text(ingredients), 0};  // as a file that can be taken in again
    return given(arguments, ingredient_list_reply(std::move(ingredients)));
}

CommandResult show_ingredient(const Arguments& arguments, const Surroundings& around) {
    if (arguments.has("--old")) return old_versions(arguments, around, EntryKind::ingredient);
    const Ingredient ingredient = open_library(around.library)->ingredient(arguments.words().front());
    if (arguments.has("--toml")) return as_toml(arguments, toml_text({ingredient}));
    return given(arguments, ingredient_reply(ingredient));
}

}  // namespace

CommandSpec command_ingredient_list() {
    return {"ingredient list",
            "what the library holds",
            {{"WORD", "only those with these words in name, kind, colour or note", true, false}},
            {{"--kind", "KIND", "only these: base, pellet, expander, seed, particle, powder, soil, liquid"},
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            list_ingredients,
            "baitwright ingredient list --kind pellet\nbaitwright ingredient list --csv"};
}

CommandSpec command_ingredient_show() {
    return {"ingredient show",
            "all that is known of an ingredient, and where it comes from",
            {{"INGREDIENT", "its name"}},
            show_flags(),
            show_ingredient,
            R"(baitwright ingredient show "brown crumb"
baitwright ingredient show "brown crumb" --old)"};
}

}  // namespace baitwright
