#include "cli/log_flags.h"

#include "questions/read_flags.h"

namespace baitwright {

std::vector<Flag> log_session_flags() {
    return {logged_on_flag(),
            {"--start", "CLOCK", "when the first feed went in: 09:30; tells two sessions of a day apart"},
            {"--hours", "TIME", "how long you fished: 5h (default: as the strategy has it)"},
            {"--people", "NUMBER", "how many anglers fed and caught", false, "people"},
            {"--venue", "VENUE", "the water", false, "venue"},
            {"--clarity", "CLARITY", "of the water: clear, tinged or coloured"},
            {"--water-temp", "TEMPERATURE", "of the water: 12degC", false, "water-temp"},
            {"--cost", "PRICE", "of all bait used: £6.20 (default: by the strategy, where all has a price)"},
            {"--note", "TEXT", "what else is worth keeping"}};
}

Flag logged_on_flag() {
    return {"--on", "DATE", "the day it happened: 2026-11-21 (default: today)"};
}

CostRequest money_of_log(const Arguments& arguments, Date on) {
    CostRequest money;
    money.on = on;
    money.usual_currency = usual_currency(arguments);
    return money;
}

Store log_store(const Surroundings& around) {
    if (around.library.folder)
        throw UsageError("unfit-flag", "--library reads a folder, and the log is in the store", "leave it out");
    return open_store(around.library);
}

}  // namespace baitwright
