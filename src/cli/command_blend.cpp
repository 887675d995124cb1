#include "cli/commands.h"

#include "answers/blend/blend_mix.h"
#include "answers/blend/share_batch.h"
#include "cli/load_solver.h"
#include "cli/result_formats.h"
#include "cli/save_recipe.h"
#include "library/named.h"
#include "questions/blend_question.h"
#include "report/blend_report.h"
#include "report/share_report.h"

namespace baitwright {

namespace {

CommandResult run_blend(const Arguments& arguments, const Surroundings& around) {
    const BlendRequest request = blend_request(arguments);
    const int bags = bags_asked(arguments);
    check_save(arguments, around);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Named<BlendSpec> named = named_blend(arguments.words().front(), around.library, *shelf);
    LinearSolver& solver = load_solver("blend");
    const BlendAnswer answer =
        with_places(named, [&] { return blend_mix(named.shelf(), named.value, request, solver); });
    if (answer.status == BlendAnswer::Status::infeasible)
        return given(arguments, reply_of(answer, blend_told, blend_json, blend_rows, 1));
    Told told = blend_told(answer);
    Json json = blend_json(answer);
    if (bags > 0) {
        if (answer.batch < bags * (10.0 * gram))
            throw UsageError("too-many-bags", "a batch that small does not fill " + std::to_string(bags) + " bags",
                             "give a larger --batch, or fewer --bags");
        const SharedBatch shared = share_batch(named.shelf(), answer, bags);
        told.gap();
        told.add(share_told(answer, shared, around.today));
        json["shared"] = share_json(shared, around.today);
    }
    const std::string note = save_recipe(arguments, around, answer.recipe);
    return given(arguments, {0, [&] { return told; }, [&] { return json; }, [&] { return blend_rows(answer); }}, note);
}

}  // namespace

CommandSpec command_blend() {
    return {"blend",
            "the cheapest mix within limits, and what each limit costs",
            {{"SPEC",
              "what it may be made of, and its limits: a shipped blend's name, a TOML file, or - for standard input"}},
            {{"--batch", "MASS", "how much to make, dry: 25kg"},
             {"--bags", "NUMBER", "share the batch out dry into this many bags, with labels and the cost a head"},
             save_flag(),
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            run_blend,
            R"(baitwright blend "club sack" --batch 25kg --bags 6
baitwright blend "winter lean" --save "my lean mix")"};
}

}  // namespace baitwright
