#include "cli/commands.h"

#include "bait/feel.h"
#include "cli/log_flags.h"
#include "cli/read_stock.h"
#include "cli/result_formats.h"
#include "library/log_notes.h"
#include "quantities/number_text.h"
#include "questions/log_question.h"
#include "report/log_report.h"

namespace baitwright {

namespace {

/// One entry by itself, its names as the library writes them.
CommandResult log_alone(const Arguments& arguments, const Surroundings& around, const std::string& command,
                        LoggedThing what, const BagMoistures& moistures = {}) {
    LogEntry entry;
    entry.on = day_of(arguments, around);
    entry.what = std::move(what);
    Store store = log_store(around);
    LogNames names(store, around.library, UnknownName::refused);
    names.complete(entry, moistures);
    LogAnswer answer;
    store.change([&] { answer.entered.push_back(enter(store.log(), {entry})); });
    return given(arguments, log_reply(command, answer));
}

/// The bags whose moisture was told, by their names in the library; each must be in the mix.
BagMoistures moistures_told(const MixToLog& logged, const Shelf& shelf) {
    BagMoistures moistures;
    for (const auto& [word, moisture] : logged.moistures) moistures.emplace_back(shelf.ingredient(word).name, moisture);
    return moistures;
}

void refuse_moisture_beside(const LoggedMix& mix, const BagMoistures& moistures) {
    for (const auto& bag : moistures) {
        bool found = false;
        for (const WeighedPart& part : mix.parts) found = found || part.of == bag.first;
        if (!found)
            throw UsageError("not-in-mix", "--moisture: no " + bag.first + " takes water in " + mix.of,
                             "see what is in it with: baitwright recipe show \"" + mix.of + "\"");
    }
}

/// One reading of a hand says both.
void refuse_wetness_beside_feel(const LoggedMix& told, const std::vector<Feel>& feels) {
    if (told.feel.empty() || !told.wetness) return;
    const Feel* feel = find_feel(feels, told.feel);
    const Feel& felt = feel_of(feels, *told.wetness);
    if (feel && feel->name != felt.name)
        throw UsageError(
            "unfit-flags",
            "--wetness: " + number_text(double(*told.wetness)) + " is " + felt.name + ", not " + feel->name,
            "say one of the two, as it felt");
}

CommandResult run_log_mix(const Arguments& arguments, const Surroundings& around) {
    const MixToLog logged = mix_to_log(arguments);
    const Date on = day_of(arguments, around);
    Store store = log_store(around);
    LogNames names(store, around.library, UnknownName::refused);
    refuse_wetness_beside_feel(logged.mix, names.feels());
    const BagMoistures moistures = moistures_told(logged, store);
    LogEntry entry;
    entry.on = on;
    entry.what = logged.mix;
    names.complete(entry, moistures);
    const auto& mix = std::get<LoggedMix>(entry.what);
    refuse_moisture_beside(mix, moistures);
    LogAnswer answer;
    if (mix.parts.empty())
        answer.warnings.push_back({"soaked-alone",
                                   "pellets alone are soaked, so this teaches nothing of your hand; what teaches how "
                                   "they drink is a weighed soak: baitwright log soak"});
    else
        require_feel(mix);
    store.change([&] { answer.entered.push_back(enter(store.log(), {entry})); });
    return given(arguments, log_reply("log mix", answer));
}

CommandResult run_log_soak(const Arguments& arguments, const Surroundings& around) {
    return log_alone(arguments, around, "log soak", soak_to_log(arguments));
}
CommandResult run_log_weigh(const Arguments& arguments, const Surroundings& around) {
    return log_alone(arguments, around, "log weigh", weight_to_log(arguments));
}
CommandResult run_log_drop(const Arguments& arguments, const Surroundings& around) {
    return log_alone(arguments, around, "log drop", look_to_log(arguments));
}
CommandResult run_log_bag(const Arguments& arguments, const Surroundings& around) {
    return log_alone(arguments, around, "log bag", LoggedBag{arguments.words().front()});
}

}  // namespace

CommandSpec command_log_mix() {
    return {"log mix",
            "a mix as it came out at the tub: dry, water poured, feel",
            {{"RECIPE", "the mix, or one ingredient: its name"}},
            {{"--dry", "MASS", "all that went in dry: 1kg"},
             {"--water", "AMOUNT", "what you poured: 680ml, or weighed: 680g"},
             {"--feel", "FEEL", "how it felt: firm; of pellets alone nothing"},
             {"--wetness", "NUMBER", "the same as a number, if you read it closer: 1.25"},
             {"--moisture", "NAME=SHARE", "of a bag, if you measured it: \"brown crumb=9%\"; may be repeated", true},
             logged_on_flag()},
            run_log_mix,
            R"(baitwright log mix "silt bed" --dry 1kg --water 680ml --feel firm
baitwright log mix "brown crumb" --dry 500g --water 330ml --feel crumbly)",
            Effect::stores};
}

CommandSpec command_log_soak() {
    return {"log soak",
            "a soak that was weighed: dry, minutes, drained",
            {{"PELLET", "a feed pellet: its name"}},
            {{"--dry", "MASS", "what they weighed dry: 100g"},
             {"--minutes", "TIME", "how long they lay under water: 6"},
             {"--drained", "MASS", "what they weighed drained: 138g"},
             {"--water-temp", "TEMPERATURE", "of the water: 12degC (default: 15degC)", false, "water-temp"},
             logged_on_flag()},
            run_log_soak,
            R"(baitwright log soak "expander 4 mm" --dry 100g --minutes 6 --drained 160g
baitwright log soak "cereal pellet 4 mm" --dry 200g --minutes 8 --drained 260g)",
            Effect::stores};
}

CommandSpec command_log_weigh() {
    return {"log weigh",
            "what a level vessel of something weighs: an ingredient dry, a mix wetted",
            {{"NAME", "the ingredient or mix"}},
            {{"--vessel", "SIZE", "what it holds: 1l, \"cup 250\""},
             {"--weighs", "MASS", "level full, without the vessel: 420g"},
             {"--feel", "FEEL", "of a mix: how it felt (default: its own)"},
             logged_on_flag()},
            run_log_weigh,
            R"(baitwright log weigh "brown crumb" --vessel 1l --weighs 420g
baitwright log weigh "silt bed" --vessel 250ml --weighs 230g --feel soft)",
            Effect::stores};
}

CommandSpec command_log_drop() {
    return {"log drop",
            "what you saw of a cupful or a ball, in a bucket or in clear water",
            {{"RECIPE", "the mix, or one ingredient: its name"}},
            {{"--cup", "SIZE", "a level cup or pot, emptied: 250ml, \"toss pot 25\""},
             {"--ball", "SIZE", "a squeezed ball: 55mm, egg"},
             {"--squeeze", "HOW", "light, firm or hard"},
             {"--feel", "FEEL", "how wet (default: the mix's own feel)"},
             {"--depth", "LENGTH", "of the water you looked into: 2m"},
             {"--hold", "TIME", "until it had fallen apart: 40s"},
             {"--breaks-at", "LENGTH", "how deep it broke: 0.6m"},
             {"--carpet-seen", "LENGTH", "how wide nine tenths of it lay: 1.1m"},
             logged_on_flag()},
            run_log_drop,
            R"(baitwright log drop "silt bed" --ball 55mm --hold 40s
baitwright log drop "silt bed" --cup 250ml --depth 2m --carpet-seen 1.1m)",
            Effect::stores};
}

CommandSpec command_log_bag() {
    return {"log bag",
            "a new bag was opened: what was learnt of the old one holds for it less closely",
            {{"INGREDIENT", "its name"}},
            {logged_on_flag()},
            run_log_bag,
            "baitwright log bag \"brown crumb\"\nbaitwright log bag \"brown crumb\" --on 2026-11-21",
            Effect::stores};
}

}  // namespace baitwright
