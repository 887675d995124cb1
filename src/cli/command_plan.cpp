#include "cli/commands.h"

#include "answers/plan/rest_of_session.h"
#include "cli/plan_flags.h"
#include "cli/result_formats.h"
#include "questions/rest_question.h"
#include "report/replies.h"

namespace baitwright {

namespace {

CommandResult run_plan(const Arguments& arguments, const Surroundings& around) {
    refuse_unfit_rest_flags(arguments);
    const PlanRequest request = plan_request(arguments, around.today);
    const RestRequest asked = rest_request(arguments, request.start);
    const SessionPlan plan = planned_session(arguments, around, request);
    CommandResult result =
        given(arguments, arguments.has("--now") ? rest_reply(plan, rest_of_session(plan, asked)) : plan_reply(plan));
    result.unheeded = unheeded_in(plan);
    return result;
}

std::vector<Flag> flags_of_plan() {
    std::vector<Flag> flags = plan_flags();
    flags.push_back({"--now", "CLOCK", "on the day, what time it is: 11:20, or minutes after the start"});
    flags.push_back(
        {"--left", "AMOUNT", "with --now: what is left, as it goes in: \"1.5 l silt bed\"; may be repeated", true});
    flags.push_back({"--bites", "WORD", "with --now: steady, slow or none (default: steady)"});
    return flags;
}

}  // namespace

CommandSpec command_plan() {
    return {"plan",
            "a session from the evening before to the last put-in; on the day, how to spread what is left",
            {{"STRATEGY", "its name, a TOML file, or - for standard input; NAME=3 for three sessions"}},
            flags_of_plan(),
            run_plan,
            R"(baitwright plan "open carpet" --start 09:30
baitwright plan "open carpet" --start 9am --now 11:20 --left "1 l silt bed")"};
}

}  // namespace baitwright
