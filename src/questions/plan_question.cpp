#include "questions/plan_question.h"

#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "quantities/units.h"
#include "questions/cost_question.h"
#include "questions/dry_question.h"
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

/// The tub that is usual asks for nothing by itself.
void read_hot_day(const Arguments& arguments, PlanRequest& request) {
    AirSetting air;
    air.sun = arguments.has("--sun");
    read_flag(arguments, "--air-temp",
              [&](const std::string& text) { air.temperature = read_temperature(arguments, text); });
    read_flag(arguments, "--humidity", [&](const std::string& text) { air.humidity = parse<Ratio>(text); });
    read_flag(arguments, "--wind", [&](const std::string& text) { air.wind = parse<Speed>(text); });
    read_flag(arguments, "--tub", [&](const std::string& text) { request.tub = read_tub(text); });
    if (is_known(air) || arguments.typed("--tub")) request.air = air;
}

}  // namespace

int read_hands(const std::string& text) {
    const double hands = parse_number(text);
    if (!(hands >= 1 && hands <= 10) || hands != static_cast<int>(hands))
        throw InputError("out-of-range", in_quotes(text) + " is not a whole number of pairs of hands from 1 to 10",
                         "for example --hands 2");
    return static_cast<int>(hands);
}

Time read_travel(const std::string& text) {
    const Time travel = parse<Time>(text);
    if (!(travel >= Time{} && travel <= 24.0 * hour))
        throw InputError("out-of-range", "the way to the water takes from nothing to 24 hours here",
                         "for example --travel 40min");
    return travel;
}

Time minutes_between(int earlier, int later) {
    return ((later - earlier + minutes_a_day) % minutes_a_day) * minute;
}

PlanRequest plan_request(const Arguments& arguments, Date today) {
    PlanRequest request;
    request.cost = cost_request(arguments, today);
    read_flag(arguments, "--start", [&](const std::string& text) { request.start = parse_clock(text); });
    read_flag(arguments, "--from", [&](const std::string& text) {
        request.work_from = read_work_from(text, request.start);
        request.work_from_clock = is_clock(text);
    });
    read_flag(arguments, "--travel", [&](const std::string& text) { request.travel = read_travel(text); });
    read_flag(arguments, "--hands", [&](const std::string& text) { request.hands = read_hands(text); });
    read_flag(arguments, "--water-temp",
              [&](const std::string& text) { request.water = read_temperature(arguments, text); });
    read_hot_day(arguments, request);
    read_pump(arguments, request.pump);
    for (const std::string& text : arguments.values("--kit"))
        request.kit.push_back(flag_value("--kit", [&] { return parse_kit(text); }));
    return request;
}

}  // namespace baitwright
