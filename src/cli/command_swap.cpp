#include "cli/commands.h"

#include "answers/blend/swap_ingredient.h"
#include "cli/load_solver.h"
#include "cli/read_stock.h"
#include "cli/result_formats.h"
#include "cli/save_recipe.h"
#include "library/named.h"
#include "questions/swap_question.h"
#include "report/replies.h"

namespace baitwright {

namespace {

std::string saved(const Arguments& arguments, const Surroundings& around, const SwapAnswer& answer) {
    if (!arguments.has("--save")) return {};
    if (!answer.changed)
        throw UsageError("not-saved", "the mix cannot be saved with its swap: " + answer.why_not_saved,
                         "leave --save out to see the match");
    return save_recipe(arguments, around, *answer.changed);
}

/// What the shed still holds.
std::vector<std::string> names_in_shed(const Surroundings& around) {
    Store store = store_of(around);
    std::vector<std::string> held;
    for (const std::string& name : store.shed().names()) {
        const auto item = store.shed().find(name);
        if (item && item->kind == StockKind::ingredient && !item->lots.empty()) held.push_back(name);
    }
    return held;
}

CommandResult run_swap(const Arguments& arguments, const Surroundings& around) {
    SwapRequest request = swap_request(arguments);
    check_save(arguments, around);
    if (arguments.has("--from-stock")) request.from = names_in_shed(around);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Named<Recipe> named = named_recipe(arguments.words().front(), *shelf);
    LinearSolver& solver = load_solver("swap");
    const SwapAnswer answer =
        with_places(named, [&] { return swap_ingredient(named.shelf(), named.value, request, solver); });
    const std::string note = saved(arguments, around, answer);
    return given(arguments, swap_reply(answer), note);
}

}  // namespace

CommandSpec command_swap() {
    return {"swap",
            "what to use in place of what ran out, and what that changes",
            {{"RECIPE", "the mix: its name, a TOML file, or - for standard input"}},
            {{"--without", "INGREDIENT", "what ran out; may be repeated", true},
             {"--at-most", "NUMBER", "how many ingredients may stand in: 1 to 3 (default: 2)"},
             {"--rest-may-move", "SHARE",
              "how far each other share may rise or fall, as a share of itself: 10% (default: not at all)"},
             {"--from-stock", "", "use only what is in the shed, however little of it"},
             save_flag(),
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            run_swap,
            R"(baitwright swap "silt bed" --without "fishmeal, brown"
baitwright swap "silt bed" --without "brown crumb" --at-most 1)"};
}

}  // namespace baitwright
