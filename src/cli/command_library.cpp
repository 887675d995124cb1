#include "cli/commands.h"

#include "bait/ingredient_kind.h"
#include "cli/add_file.h"
#include "cli/output_file.h"
#include "cli/result_formats.h"
#include "cli/soak_test_flags.h"
#include "files/disk.h"
#include "files/ingredient_csv.h"
#include "files/library_text.h"
#include "library/change_library.h"
#include "library/edited_ingredient.h"
#include "library/named.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "questions/measure_question.h"
#include "questions/read_flags.h"
#include "report/replies.h"

namespace baitwright {

namespace {

KeyValue read_key_value(const std::string& text) {
    const auto equals = text.find('=');
    if (equals == std::string::npos || equals == 0)
        throw InputError("no-value", "'" + text + "' has no value", "write it as in --set \"absorption=0.7 g/g\"");
    return {text.substr(0, equals), text.substr(equals + 1)};
}

/// All that a file holds; the values of flags are in the file.
CommandResult add_ingredients(const Arguments& arguments, const Surroundings& around, const std::string& path) {
    for (const char* flag : {"--kind", "--like", "--set"})
        if (arguments.has(flag))
            throw UsageError("unfit-flag", std::string(flag) + " goes with a name, and " + path + " is a file",
                             "leave it out, or write it into the file");
    return add_file(arguments, around, EntryKind::ingredient, path);
}

/// A new ingredient has a kind: told, or that of the one it is like.
void refuse_without_kind(const Arguments& arguments, const std::vector<KeyValue>& values) {
    if (arguments.has("--like")) return;
    for (const KeyValue& value : values)
        if (value.key == "kind") return;
    throw UsageError("no-kind", "what kind of ingredient is " + in_quotes(arguments.words().front()) + "?",
                     "start from one like it: --like \"brown crumb\"; or say --kind, one of\n    " +
                         baitwright::joined(ingredient_kind_names, ", "));
}

/// A hint for a file, `add a line such as colour = "red"`, as one for the command line: `add --set "colour=red"`.
std::string hint_with_set(const std::string& hint) {
    const std::string for_a_file = "add a line such as ";
    const auto equals = hint.find(" = \"");
    if (!hint.starts_with(for_a_file) || equals == std::string::npos || !hint.ends_with('"')) return hint;
    return "add --set \"" + hint.substr(for_a_file.size(), equals - for_a_file.size()) + "=" + hint.substr(equals + 4);
}

Ingredient told_ingredient(const std::string& name, const std::optional<Ingredient>& like,
                           const std::vector<KeyValue>& values) {
    try {
        return edited_ingredient(name, like, values);
    } catch (const InputError& error) {
        std::vector<Fault> faults = error.faults();
        for (Fault& fault : faults) fault.hint = hint_with_set(fault.hint);
        throw InputError(std::move(faults));
    }
}

CommandResult add_ingredient(const Arguments& arguments, const Surroundings& around) {
    refuse_folder(around);
    const std::string& word = arguments.words().front();
    if (means_a_file(word) || word.ends_with(".csv")) return add_ingredients(arguments, around, word);
    if (arguments.has("--like") && arguments.has("--kind"))
        throw UsageError("two-kinds", "--like and --kind were both given",
                         "leave --kind out: the kind comes with --like \"brown crumb\"");
    std::vector<KeyValue> values;
    if (const auto kind = arguments.value("--kind")) values.push_back({"kind", *kind});
    for (const std::string& text : arguments.values("--set"))
        values.push_back(flag_value("--set", [&] { return read_key_value(text); }));
    refuse_without_kind(arguments, values);
    Store store = open_store(around.library);
    std::optional<Ingredient> like;
    if (const auto name = arguments.value("--like")) like = store.ingredient(*name);
    const Ingredient made = told_ingredient(word, like, values);
    return given(arguments, change_reply("ingredient add", names_of(put_ingredients(store, {made}, around.today))));
}

CommandResult measure(const Arguments& arguments, const Surroundings& around) {
    refuse_folder(around);
    std::vector<KeyValue> measured = kitchen_tests(arguments, around.today);
    Store store = open_store(around.library);
    const Ingredient old = store.ingredient(arguments.words().front());
    for (KeyValue& value : read_soak_test(arguments, old, around.today)) measured.push_back(std::move(value));
    if (measured.empty())
        throw UsageError("nothing-measured", "no measurement was given",
                         "for example --absorption \"0.7 g/g\", or --vessel 1pt --holds 240g");
    heed_marks(arguments, old, measured);
    const Ingredient made = edited_ingredient(old.name, old, measured);
    return given(arguments, change_reply("ingredient measure", names_of(put_ingredients(store, {made}, around.today))));
}

CommandResult import_file(const Arguments& arguments, const Surroundings& around) {
    return add_file(arguments, around, EntryKind::ingredient, arguments.words().front());
}

void check_export(const Arguments& arguments) {
    const std::string path = arguments.value("--to").value_or("");
    if (arguments.has("--json"))
        throw UsageError("unfit-flag", "an export is TOML or CSV, not JSON",
                         "leave --json out; as JSON it comes with: baitwright ingredient show \"brown crumb\" --json");
    if (arguments.has("--replace") && path.empty())
        throw UsageError("unfit-flag", "--replace goes with --to", "leave it out, or add --to bags.toml");
    if (arguments.has("--csv") && path.ends_with(".toml"))
        throw UsageError("two-formats", "--csv was given, and '" + path + "' ends in .toml",
                         "leave --csv out, or write --to bags.csv");
}

CommandResult export_file(const Arguments& arguments, const Surroundings& around) {
    check_export(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<std::string> names = arguments.words();
    if (names.empty()) names = shelf->ingredient_names();
    std::vector<Ingredient> ingredients;
    ingredients.reserve(names.size());
    for (const std::string& name : names) ingredients.push_back(shelf->ingredient(name));
    const std::string text = arguments.has("--csv") || arguments.value("--to").value_or("").ends_with(".csv")
                                 ? csv_text(ingredients)
                                 : toml_text(ingredients);
    const auto path = arguments.value("--to");
    if (!path || *path == "-") return {text, 0};
    keep_unless_told(*path, arguments);
    write_text_file(*path, text);
    return {std::to_string(ingredients.size()) + (ingredients.size() == 1 ? " ingredient" : " ingredients") +
                " written to " + *path + "\n",
            0};
}

CommandResult recipe_add(const Arguments& arguments, const Surroundings& around) {
    return add_file(arguments, around, EntryKind::mix, arguments.words().front());
}

}  // namespace

CommandSpec command_ingredient_add() {
    return {"ingredient add",
            "add an ingredient of your own; or all that a file holds",
            {{"NAME", "what you call it, or a file ending in .toml or .csv"}},
            {{"--kind", "KIND", "base, pellet, expander, seed, particle, powder, soil, liquid"},
             {"--like", "INGREDIENT", "start from the values of this one"},
             {"--set", "KEY=VALUE", "a value, by its key in the files: \"absorption=0.7 g/g\"; may be repeated", true}},
            add_ingredient,
            R"(baitwright ingredient add "red crumb" --like "brown crumb" --set colour=red
baitwright ingredient add "club pellet" --like "fishmeal pellet 4 mm")",
            Effect::stores};
}

CommandSpec command_ingredient_measure() {
    CommandSpec spec{"ingredient measure",
                     "put your own kitchen measurement in place of a default",
                     {{"INGREDIENT", "its name"}},
                     {{"--absorption", "RATIO", "squeeze test: water per g at which 3 balls of 5 hold, \"0.7 g/g\""},
                      {"--slump", "RATIO", "up-ended pot: water per g at which it loses a third of its height"},
                      {"--moisture", "SHARE", "of the bag: \"8 %\""},
                      {"--vessel", "VOLUME", "level vessel: what it holds, 1pt"},
                      {"--holds", "MASS", "level vessel: what that weighs, 240g"},
                      {"--spread", "SHARE", "how far your measurements differ (default: 5 %)"},
                      {"--how", "TEXT", "how you measured, in your words"}},
                     measure,
                     R"(baitwright ingredient measure "brown crumb" --absorption "0.7 g/g"
baitwright ingredient measure "brown crumb" --vessel 1pt --holds 240g)",
                     Effect::stores};
    for (const Flag& flag : soak_test_flags()) spec.flags.push_back(flag);
    return spec;
}

CommandSpec command_ingredient_import() {
    return {"ingredient import",
            "add all that a TOML or CSV file holds; old versions are kept",
            {{"FILE", "ending in .toml or .csv"}},
            {},
            import_file,
            "baitwright ingredient import my-bags.csv\nbaitwright ingredient import my-bags.toml",
            Effect::stores};
}

CommandSpec command_ingredient_export() {
    return {"ingredient export",
            "ingredients as TOML, or as CSV for a spreadsheet",
            {{"INGREDIENT", "their names (default: all of them)", true, false}},
            {{"--csv", "", "as CSV"},
             {"--to", "FILE", "write it to this file, not to the screen"},
             {"--replace", "", "write over a file that is there"}},
            export_file,
            R"(baitwright ingredient export --csv --to bags.csv
baitwright ingredient export "brown crumb")"};
}

CommandSpec command_recipe_add() {
    return {"recipe add",
            "add the mixes of a TOML file, and all else that it holds; old versions are kept",
            {{"FILE", "ending in .toml, or - for standard input"}},
            {},
            recipe_add,
            "baitwright recipe add my-mix.toml\nbaitwright recipe add - < my-mix.toml",
            Effect::stores};
}

}  // namespace baitwright
