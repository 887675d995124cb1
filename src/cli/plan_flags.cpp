#include "cli/plan_flags.h"

#include <algorithm>
#include <array>

#include "cli/cost_flags.h"
#include "cli/read_flags.h"
#include "quantities/clock.h"

namespace baitwright {

std::vector<Flag> plan_flags() {
    std::vector<Flag> flags{
        {"--start", "CLOCK", "the first put-in: 09:30; minutes from the start where not given"},
        {"--kit", "ITEM", "what you have: \"cup 250\", \"pot 25\", \"feeder 30\", \"tub 12 l\"; may be repeated", true},
        {"--water-temp", "TEMPERATURE", "of the water poured on; the strategy's where not given"},
    };
    constexpr std::array<std::string_view, 7> shared{"--length", "--feel", "--without", "--people", "--have", "--empty-shed", "--on"};
    for (const Flag& flag : cost_flags())
        if (std::find(shared.begin(), shared.end(), flag.name) != shared.end()) flags.push_back(flag);
    return flags;
}

PlanRequest plan_request(const Arguments& arguments, const Surroundings& around) {
    PlanRequest request;
    request.cost = cost_request(arguments, around);
    read_flag(arguments, "--start", [&](const std::string& text) { request.start = parse_clock(text); });
    read_flag(arguments, "--water-temp", [&](const std::string& text) { request.water = parse<Temperature>(text); });
    for (const std::string& text : arguments.values("--kit")) request.kit.push_back(flag_value("--kit", [&] { return parse_kit(text); }));
    return request;
}

}  // namespace baitwright
