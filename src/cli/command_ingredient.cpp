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

/// The ingredients of a library one after the other, in the order of their names: read anew each time.
EachIngredient each_of(const std::shared_ptr<const Shelf>& shelf, std::vector<std::string> names,
                       std::optional<IngredientKind> kind) {
    return [shelf, names = std::move(names), kind](const std::function<void(const Ingredient&)>& take) {
        for (const std::string& name : names)
            if (const Ingredient ingredient = shelf->ingredient(name); !kind || ingredient.kind == *kind)
                take(ingredient);
    };
}

/// The names of those that hold all the words.
std::vector<std::string> names_with(const std::vector<std::string>& words, const EachIngredient& each) {
    std::vector<SearchedEntry> all;
    each([&](const Ingredient& ingredient) { all.push_back(searched(ingredient)); });
    std::vector<std::string> names;
    for (const std::size_t place : places_found(words, all)) names.push_back(all[place].name);
    return names;
}

CommandResult list_ingredients(const Arguments& arguments, const Surroundings& around) {
    std::optional<IngredientKind> kind;
    if (const auto text = arguments.value("--kind")) kind = flag_value("--kind", [&] { return read_kind(*text); });
    const std::shared_ptr<const Shelf> shelf = open_library(around.library);
    EachIngredient each = each_of(shelf, shelf->ingredient_names(), kind);
    if (!arguments.words().empty()) each = each_of(shelf, names_with(arguments.words(), each), kind);
    if (!arguments.has("--csv")) return given(arguments, ingredient_list_reply(each));
    std::vector<Ingredient> all;
    each([&](const Ingredient& ingredient) { all.push_back(ingredient); });
    return {csv_text(all), 0};  // as a file that can be taken in again
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
