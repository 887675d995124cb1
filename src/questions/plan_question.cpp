#include "questions/plan_question.h"

#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "questions/cost_question.h"
#include "questions/read_flags.h"
#include "questions/soak_question.h"

namespace baitwright {

namespace {

constexpr int minutes_a_day = 24 * 60;

/// "08:50" with a start, or so long before it: "40 min".
Time read_work_from(const std::string& text, const std::optional<int>& start) {
    if (!is_clock(text)) return in_range(parse<Time>(text));
    if (!start)
        throw InputError("no-start", in_quotes(text) + " is a time of day, and the start has none",
                         "say --start 09:30 as well, or how long before it, as in --from \"40 min\"");
    return minutes_between(parse_clock(text), *start);
}

}  // namespace

Time minutes_between(int earlier, int later) {
    return ((later - earlier + minutes_a_day) % minutes_a_day) * minute;
}

PlanRequest plan_request(const Arguments& arguments, Date today) {
    PlanRequest request;
    request.cost = cost_request(arguments, today);
    read_flag(arguments, "--start", [&](const std::string& text) { request.start = parse_clock(text); });
    read_flag(arguments, "--from",
              [&](const std::string& text) { request.work_from = read_work_from(text, request.start); });
    read_flag(arguments, "--water-temp",
              [&](const std::string& text) { request.water = read_temperature(arguments, text); });
    read_pump(arguments, request.pump);
    for (const std::string& text : arguments.values("--kit"))
        request.kit.push_back(flag_value("--kit", [&] { return parse_kit(text); }));
    return request;
}

}  // namespace baitwright
