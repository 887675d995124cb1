#include "cli/command_plan.h"

#include <algorithm>

#include "answers/plan_session.h"
#include "answers/rest_of_session.h"
#include "cli/cost_flags.h"
#include "cli/read_flags.h"
#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "report/plan_report.h"
#include "shelf/strategy_argument.h"
#include "shelf/venue_argument.h"

namespace baitwright {

namespace {

constexpr int minutes_a_day = 24 * 60;

Time minutes_between(int earlier, int later) {
    return ((later - earlier + minutes_a_day) % minutes_a_day) * minute;
}

bool is_clock(const std::string& text) {
    return text.find(':') != std::string::npos;
}

/// "08:50" with a start, or so long before it: "40 min".
Time read_work_from(const std::string& text, const std::optional<int>& start) {
    if (!is_clock(text)) return above_zero(parse<Time>(text));
    if (!start)
        throw InputError("no-start", in_quotes(text) + " is a clock, and there is none for the start",
                         "say --start 09:30 as well, or how long before it, as in --from \"40 min\"");
    return minutes_between(parse_clock(text), *start);
}

PlanRequest plan_request(const Arguments& arguments, const Surroundings& around) {
    PlanRequest request;
    request.cost = cost_request(arguments, around);
    read_flag(arguments, "--start", [&](const std::string& text) { request.start = parse_clock(text); });
    read_flag(arguments, "--from", [&](const std::string& text) { request.work_from = read_work_from(text, request.start); });
    read_flag(arguments, "--water-temp", [&](const std::string& text) { request.water = parse<Temperature>(text); });
    for (const std::string& text : arguments.values("--kit"))
        request.kit.push_back(flag_value("--kit", [&] { return parse_kit(text); }));
    return request;
}

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

int status_of(const SessionPlan& plan) {
    const bool no = std::any_of(plan.warnings.begin(), plan.warnings.end(),
                                [](const Warning& warning) { return warning.answer_is_no; });
    return no || !plan.breaches.empty() ? 1 : 0;
}

CommandResult run(const Arguments& arguments, const Surroundings& around) {
    refuse_unfit_flags(arguments);
    PlanRequest request = plan_request(arguments, around);
    const RestRequest asked = rest_request(arguments, request.start);
    const TimedWord word = timed_word(arguments.words().front());
    request.cost.what_if.times = word.times;
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const NamedStrategy named = strategy_argument(word.strategy, *shelf);
    if (const auto venue = arguments.value("--venue"))
        request.venue = venue_argument(*venue, around.library, named.shelf()).venue;
    const UnrolledStrategy unrolled = with_places(named, [&] { return unroll_strategy(named.shelf(), named.strategy); });
    const StockOnHand stock = stock_on_hand(arguments, named.shelf(), around, unrolled.totals);
    const SessionPlan plan =
        with_places(named, [&] { return plan_session(named.shelf(), named.strategy, stock, request); });
    if (!arguments.has("--now"))
        return {arguments.has("--json") ? json_text(plan_json(plan)) : plan_text(plan), status_of(plan)};
    const RestOfSession rest = rest_of_session(plan, asked);
    return {arguments.has("--json") ? json_text(rest_json(plan, rest)) : rest_text(plan, rest), 0};
}

/// Those of `cost` that a plan takes too.
std::vector<Flag> plan_flags() {
    std::vector<Flag> flags{
        {"--start", "CLOCK", "the first put-in: 09:30; minutes from the start where not given"},
        {"--from", "CLOCK", "the work can begin then, and nothing is done before: 08:10, or \"80 min\" before the start"},
        {"--venue", "VENUE", "hold it against the rules of this water: its name, or a TOML file"},
        {"--kit", "ITEM", "what you have: \"cup 250\", \"pot 25\", \"feeder 30\", \"tub 12 l\"; may be repeated", true},
        {"--water-temp", "TEMPERATURE", "of the water poured on; the strategy's where not given"},
        {"--now", "CLOCK", "on the day: it is now 11:20, or so many minutes after the start"},
        {"--left", "AMOUNT", "with --now: \"1.5 l silt bed\" is left, as it goes in; may be repeated", true},
        {"--bites", "WORD", "with --now: steady, slow or none; steady where not given"},
    };
    constexpr std::array<std::string_view, 9> shared{"--length", "--feel", "--without", "--price", "--people",
                                                     "--have", "--empty-shed", "--reused-frozen", "--on"};
    for (const Flag& flag : cost_flags())
        if (std::find(shared.begin(), shared.end(), flag.name) != shared.end()) flags.push_back(flag);
    return flags;
}

}  // namespace

CommandSpec command_plan() {
    return {"plan",
            "a session from the evening before to the last put-in; on the day, how to spread what is left",
            {{"STRATEGY", "its name, a TOML file, or - for standard input; NAME=3 for three sessions"}},
            plan_flags(),
            run,
            "baitwright plan \"open carpet\" --start 09:30"};
}

}  // namespace baitwright
