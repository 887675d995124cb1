#include "cli/commands.h"

#include "answers/paid/brought_for_advice.h"
#include "answers/strategy/advise.h"
#include "cli/result_formats.h"
#include "library/advice_rules.h"
#include "questions/advise_question.h"
#include "report/replies.h"

namespace baitwright {

namespace {

CommandResult run_advise(const Arguments& arguments, const Surroundings& around) {
    const Circumstances now = circumstances(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const std::vector<AdviceRule> rules = advice_rules(around.library);
    const auto* store = dynamic_cast<const Store*>(shelf.get());
    const std::vector<LogEntry> log = store ? store->log().entries() : std::vector<LogEntry>{};
    const AdviseAnswer answer = advise(*shelf, rules, now, brought_for_advice(log, now));
    return given(arguments, advise_reply(answer));
}

}  // namespace

CommandSpec command_advise() {
    return {
        "advise",
        "which strategies and mixes suit the day, and why: common practice, no source",
        {},
        {{"--season", "SEASON", "spring, summer, autumn or winter"},
         {"--clarity", "CLARITY", "of the water: clear, tinged or coloured"},
         {"--water-temp", "TEMPERATURE", "of the water: 6degC", false, "water-temp"},
         {"--depth", "LENGTH", "of the water: 2.5m"},
         {"--tow", "SPEED", "of the water: 5cm/s"},
         {"--hours", "TIME", "how long you fish: 5h"},
         {"--bed", "BED", "pale (sand, chalk) or dark (silt, leaves)"},
         {"--fish", "FISH", "what you are after: bream; may be repeated", true}},
        run_advise,
        "baitwright advise --water-temp 6degC --clarity clear --fish roach\nbaitwright advise --season summer --hours 5h --fish bream"};
}

}  // namespace baitwright
