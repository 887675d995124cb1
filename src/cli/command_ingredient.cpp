#include "cli/commands.h"

#include "cli/old_versions.h"
#include "cli/result_formats.h"
#include "files/ingredient_csv.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"
#include "report/entry_replies.h"

namespace baitwright {

namespace {

IngredientKind read_kind(const std::string& text) {
    std::vector<std::string> names;
    std::string listed;
    for (std::size_t i = 0; i < ingredient_kind_names.size(); ++i) {
        if (folded_name(text) == ingredient_kind_names[i]) return static_cast<IngredientKind>(i);
        names.emplace_back(ingredient_kind_names[i]);
        listed += (i ? ", " : "") + names.back();
    }
    const std::string hint = did_you_mean(text, names);
    throw InputError("unknown-kind", "'" + text + "' is not a kind of ingredient",
                     hint.empty() ? "the kinds are: " + listed : hint);
}

CommandResult list_ingredients(const Arguments& arguments, const Surroundings& around) {
    std::optional<IngredientKind> kind;
    if (const auto text = arguments.value("--kind")) kind = flag_value("--kind", [&] { return read_kind(*text); });
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<Ingredient> ingredients;
    for (const std::string& name : shelf->ingredient_names()) {
        Ingredient ingredient = shelf->ingredient(name);
        if (!kind || ingredient.kind == *kind) ingredients.push_back(std::move(ingredient));
    }
    if (arguments.has("--csv")) return {csv_text(ingredients), 0};  // as a file that can be taken in again
    return given(arguments, ingredient_list_reply(std::move(ingredients)));
}

CommandResult show_ingredient(const Arguments& arguments, const Surroundings& around) {
    if (arguments.has("--old")) return old_versions(arguments, around, "ingredient");
    const Ingredient ingredient = open_library(around.library)->ingredient(arguments.words().front());
    return given(arguments, ingredient_reply(ingredient));
}

}  // namespace

CommandSpec command_ingredient_list() {
    return {"ingredient list",
            "what the library holds",
            {},
            {{"--kind", "KIND", "only these: base, pellet, expander, seed, particle, powder, soil, liquid"},
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            list_ingredients,
            "baitwright ingredient list --kind pellet\nbaitwright ingredient list --csv"};
}

CommandSpec command_ingredient_show() {
    return {"ingredient show",
            "all that is known of an ingredient, and where it comes from",
            {{"INGREDIENT", "its name"}},
            {{"--old", "", "the versions that were replaced"}},
            show_ingredient,
            R"(baitwright ingredient show "brown crumb"
baitwright ingredient show "brown crumb" --old)"};
}

}  // namespace baitwright
