#include "cli/command_mix.h"

#include "answers/answer_mix.h"
#include "cli/mix_flags.h"
#include "cli/result_formats.h"
#include "report/mix_json.h"
#include "report/mix_text.h"
#include "report/rows.h"
#include "shelf/recipe_argument.h"

namespace baitwright {

namespace {

CommandResult run(const Arguments& arguments, const Surroundings& around) {
    const MixRequest request = mix_request(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const NamedRecipe named = recipe_argument(arguments.words().front(), *shelf);
    const MixAnswer answer =
        with_places(named, [&] { return answer_mix(named.shelf(), named.recipe, request); });
    CommandResult result;
    for (const Warning& warning : answer.warnings)
        if (warning.answer_is_no) result.status = 1;
    result.output = arguments.has("--json")  ? json_text(mix_json(answer))
                    : arguments.has("--csv") ? csv_of_rows(mix_rows(answer))
                                             : mix_text(answer);
    return result;
}

}  // namespace

CommandSpec command_mix() {
    return {"mix", "scale a mix: what to weigh, how much water and when, what it costs",
            {{"RECIPE", "the mix: its name, a TOML file, or - for standard input"}},
            mix_flags(), run, "baitwright mix \"silt bed\" --balls 20x55mm --feel firm"};
}

}  // namespace baitwright
