#include "cli/plan_flags.h"

#include <algorithm>
#include <array>

#include "cli/cost_flags.h"
#include "library/named.h"

namespace baitwright {

std::vector<Flag> plan_flags() {
    std::vector<Flag> flags{
        {"--start", "CLOCK", "the first put-in: 09:30 (default: count hours and minutes from it)"},
        {"--from", "CLOCK", "the earliest you can begin the work: 08:10, or \"80 min\" before the start"},
        {"--travel", "TIME", "the way to the water: 40min; all is made and loaded before it (default: none)", false,
         "travel"},
        {"--hands", "NUMBER", "pairs of hands that do the work, 1 to 10 (default: 1)", false, "hands"},
        {"--venue", "VENUE", "check it against the rules of this water: its name, or a TOML file", false, "venue"},
        {"--kit", "ITEM", R"(what you have: "cup 250", "pot 25", "feeder 30", "tub 12 l"; may be repeated)", true,
         "kit"},
        {"--pump", "VOLUME", "what a stroke of your pump draws (default: 100ml)", false, "pump"},
        {"--vessel", "VOLUME", "the pump's whole vessel (default: 500ml)", false, "vessel"},
        {"--water-temp", "TEMPERATURE", "of the water poured on (default: the strategy's)", false, "water-temp"},
        {"--air-temp", "TEMPERATURE", "of the air over your tubs: 30degC; tells when to spray, what to keep cool"},
        {"--humidity", "SHARE", "of that air: 40% (default: 60%)"},
        {"--wind", "SPEED", "over the tubs (default: 2m/s)"},
        {"--sun", "", "the tubs stand in the sun"},
        {"--tub", "SIZE", "the open face of a tub: 40x30cm, or 35cm across (default: 40x30cm)", false, "tub"},
    };
    constexpr std::array<std::string_view, 9> shared{
        "--length", "--feel", "--without", "--price", "--people", "--have", "--empty-shed", "--reused-frozen", "--on"};
    for (const Flag& flag : cost_flags())
        if (std::find(shared.begin(), shared.end(), flag.name) != shared.end()) flags.push_back(flag);
    return flags;
}

std::vector<std::string> unheeded_in(const SessionPlan& plan) {
    std::vector<std::string> unheeded;
    if (!plan.hot_day) unheeded.emplace_back("--tub");
    const bool pumps =
        std::any_of(plan.soaks.begin(), plan.soaks.end(), [](const PlannedSoak& soak) { return soak.strokes > 0; });
    if (!pumps) unheeded.insert(unheeded.end(), {"--pump", "--vessel"});
    return unheeded;
}

SessionPlan planned_session(const Arguments& arguments, const Surroundings& around, PlanRequest request) {
    const TimedWord word = timed_word(arguments.words().front());
    request.cost.what_if.times = word.times;
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Named<Strategy> named = named_strategy(word.strategy, *shelf);
    if (const auto venue = arguments.value("--venue"))
        request.venue = named_venue(*venue, around.library, named.shelf()).value;
    const StockOnHand stock = stock_on_hand(arguments, named.shelf(), around);
    return with_places(named, [&] { return plan_session(named.shelf(), named.value, stock, request); });
}

}  // namespace baitwright
