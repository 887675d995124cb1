#include "cli/save_recipe.h"

#include "cli/result_formats.h"
#include "report/change_report.h"
#include "shelf/change_library.h"

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
    if (name->find('/') != std::string::npos || name->front() == '-' ||
        name->find_first_not_of(' ') == std::string::npos)
        throw UsageError("bad-name", "--save: '" + *name + "' is no name for a mix", "a name is a few plain words");
}

std::string save_recipe(const Arguments& arguments, const Surroundings& around, Recipe recipe) {
    const auto name = arguments.value("--save");
    if (!name) return {};
    recipe.name = *name;
    Store store = open_store(around.library.store);
    return "\n" + change_text(names_of(put_recipes(store, {std::move(recipe)}, around.today)));
}

}  // namespace baitwright
