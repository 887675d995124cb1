#include "cli/command_blend.h"

#include "answers/blend_mix.h"
#include "cli/load_solver.h"
#include "cli/read_flags.h"
#include "cli/result_formats.h"
#include "cli/save_recipe.h"
#include "report/blend_report.h"
#include "shelf/blend_argument.h"
#include "shelf/recipe_argument.h"

namespace baitwright {

namespace {

BlendRequest blend_request(const Arguments& arguments) {
    BlendRequest request;
    read_flag(arguments, "--batch", [&](const std::string& text) { request.batch = read_batch(text); });
    return request;
}

CommandResult run(const Arguments& arguments, const Surroundings& around) {
    const BlendRequest request = blend_request(arguments);
    check_save(arguments, around);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const NamedBlend named = blend_argument(arguments.words().front(), around.library, *shelf);
    LinearSolver& solver = load_solver("blend");
    const BlendAnswer answer = with_places(named, [&] { return blend_mix(named.shelf(), named.spec, request, solver); });
    const bool optimal = answer.status == BlendAnswer::Status::optimal;
    std::string saved;
    if (optimal) saved = save_recipe(arguments, around, answer.recipe);
    CommandResult result{{}, optimal ? 0 : 1};
    result.output = arguments.has("--json")  ? json_text(blend_json(answer))
                    : arguments.has("--csv") ? csv_of_rows(blend_rows(answer))
                                             : blend_text(answer) + saved;
    return result;
}

}  // namespace

CommandSpec command_blend() {
    return {"blend", "the cheapest mix within limits, and what each limit costs",
            {{"SPEC", "what it may hold and what must hold of it: a shipped blend's name, a TOML file, or - for standard input"}},
            {{"--batch", "MASS", "how much of it is made, dry: 25kg; decides which packs its prices are from"},
             save_flag(),
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            run, "baitwright blend \"club sack\" --batch 25kg"};
}

}  // namespace baitwright
