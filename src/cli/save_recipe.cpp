#include "cli/save_recipe.h"

#include "cli/result_formats.h"
#include "library/change_library.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/plain_words.h"
#include "report/change_report.h"

namespace baitwright {

Flag save_flag() {
    return {"--save", "NAME", "keep it in the store as a mix of that name"};
}

void check_save(const Arguments& arguments, const Surroundings& around) {
    const auto name = arguments.value("--save");
    if (!name) return;
    if (around.library.folder)
        throw UsageError("unfit-flag", "--library reads a folder and changes nothing",
                         "leave it out, to save into the store");
    if (const std::string why = refused_as_name(trimmed(*name)); !why.empty())
        throw UsageError("bad-name", "--save: the name " + in_quotes(*name) + " " + why, "a name is a few plain words");
}

std::string save_recipe(const Arguments& arguments, const Surroundings& around, Recipe recipe) {
    const auto name = arguments.value("--save");
    if (!name) return {};
    recipe.name = std::string(trimmed(*name));
    Store store = open_store(around.library);
    return "\n" + change_told(names_of(put_recipes(store, {std::move(recipe)}, around.today))).text();
}

}  // namespace baitwright
