#include "cli/command_plan.h"

#include "answers/rest_of_session.h"
#include "cli/plan_flags.h"
#include "cli/read_flags.h"
#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "report/plan_report.h"

namespace baitwright {

namespace {

/// "11:20" with a start; "110" or "110 min" after it.
Time read_now(const std::string& text, const std::optional<int>& start) {
    if (!is_clock(text)) {
        if (text.find_first_not_of("0123456789") == std::string::npos && !text.empty()) return parse_number(text) * minute;
        return parse<Time>(text);
    }
    if (!start)
        throw InputError("no-start", in_quotes(text) + " is a clock, and there is none for the start",
                         "say --start 09:30 as well, or minutes after the start, as in --now 110");
    return minutes_between(*start, parse_clock(text));
}

/// "1.5 l silt bed", "300 g of maggots".
LeftOver read_left(const std::string& text) {
    const auto blank = text.find(' ');
    std::size_t end = text.find_first_not_of("0123456789.½¼¾/ ");
    end = end == std::string::npos ? text.size() : text.find(' ', end);
    if (blank == std::string::npos || end == std::string::npos || end + 1 >= text.size())
        throw InputError("no-amount", in_quotes(text) + " does not say how much of what is left",
                         "write it as in --left \"1.5 l silt bed\"");
    std::string name = text.substr(end + 1);
    if (name.starts_with("of ")) name.erase(0, 3);
    return {name, read_amount(text.substr(0, end))};
}

Bites read_bites(const std::string& text) {
    if (text == "steady") return Bites::steady;
    if (text == "slow") return Bites::slow;
    if (text == "none") return Bites::none;
    throw InputError("unknown-word", "bites are not " + in_quotes(text), "they are steady, slow or none");
}

RestRequest rest_request(const Arguments& arguments, const std::optional<int>& start) {
    RestRequest request;
    read_flag(arguments, "--now", [&](const std::string& text) { request.now = read_now(text, start); });
    for (const std::string& text : arguments.values("--left"))
        request.left.push_back(flag_value("--left", [&] { return read_left(text); }));
    read_flag(arguments, "--bites", [&](const std::string& text) { request.bites = read_bites(text); });
    return request;
}

void refuse_unfit_flags(const Arguments& arguments) {
    for (const char* flag : {"--left", "--bites"})
        if (arguments.has(flag) && !arguments.has("--now"))
            throw UsageError("unfit-flag", std::string(flag) + " goes with --now", "say when it is, as in --now 11:20");
    if (arguments.has("--now") && !arguments.has("--left"))
        throw UsageError("missing-flag", "--now was given, but not what is left", "say it as in --left \"1.5 l silt bed\"");
}

CommandResult run(const Arguments& arguments, const Surroundings& around) {
    refuse_unfit_flags(arguments);
    const PlanRequest request = plan_request(arguments, around);
    const RestRequest asked = rest_request(arguments, request.start);
    const SessionPlan plan = planned_session(arguments, around, request);
    if (!arguments.has("--now"))
        return {arguments.has("--json") ? json_text(plan_json(plan)) : plan_text(plan), plan_status(plan)};
    const RestOfSession rest = rest_of_session(plan, asked);
    return {arguments.has("--json") ? json_text(rest_json(plan, rest)) : rest_text(plan, rest), 0};
}

std::vector<Flag> flags_of_plan() {
    std::vector<Flag> flags = plan_flags();
    flags.push_back({"--now", "CLOCK", "on the day: it is now 11:20, or so many minutes after the start"});
    flags.push_back({"--left", "AMOUNT", "with --now: \"1.5 l silt bed\" is left, as it goes in; may be repeated", true});
    flags.push_back({"--bites", "WORD", "with --now: steady, slow or none; steady where not given"});
    return flags;
}

}  // namespace

CommandSpec command_plan() {
    return {"plan",
            "a session from the evening before to the last put-in; on the day, how to spread what is left",
            {{"STRATEGY", "its name, a TOML file, or - for standard input; NAME=3 for three sessions"}},
            flags_of_plan(),
            run,
            "baitwright plan \"open carpet\" --start 09:30"};
}

}  // namespace baitwright
