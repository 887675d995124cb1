#include "cli/commands.h"

#include "cli/log_flags.h"
#include "cli/read_stock.h"
#include "cli/result_formats.h"
#include "files/disk.h"
#include "library/log_notes.h"
#include "library/log_session.h"
#include "quantities/in_quotes.h"
#include "questions/log_question.h"
#include "report/log_report.h"

namespace baitwright {

namespace {

/// A clock elsewhere may be a day ahead of ours.
constexpr std::chrono::days ahead{1};

const std::vector<std::string>& usual_of_sessions() {
    static const std::vector<std::string> flags{"--people", "--venue", "--water-temp"};
    return flags;
}

CommandResult add_notes(const Arguments& arguments, const Surroundings& around, const std::string& path) {
    const CommandSpec command = command_log_add();
    for (const Flag& flag : command.flags)
        if (flag.name != "--from" && arguments.typed(std::string(flag.name)))
            throw UsageError("unfit-flag", std::string(flag.name) + " tells of a planned session, and --from has notes",
                             "leave it out; the notes may say it, or: baitwright log edit NUMBER");
    const std::string text = read_text_file(path);
    const Notes notes = read_notes(text, path == "-" ? "standard input" : path, around.today + ahead);
    Store store = log_store(around);
    CommandResult result =
        given(arguments, log_reply("log add", take_notes(store, around.library, notes,
                                                         money_of_log(arguments, around.today), around.today)));
    result.unheeded = usual_of_sessions();
    return result;
}

CommandResult run_log_add(const Arguments& arguments, const Surroundings& around) {
    const auto from = arguments.value("--from"), planned = arguments.value("--planned");
    if (from && planned) throw UsageError("two-sources", "--from and --planned were both given", "give one of them");
    if (from) return add_notes(arguments, around, *from);
    if (!planned)
        throw UsageError("nothing-to-log", "what was fished?",
                         "say it with --planned \"open carpet\", or give the notes of the phone: --from notes.toml");
    const Date on = day_of(arguments, around);
    const PlannedSession session = planned_to_log(arguments, *planned);
    Store store = log_store(around);
    return given(arguments,
                 log_reply("log add", log_planned(store, around.library, session, on, money_of_log(arguments, on))));
}

CommandResult run_log_blank(const Arguments& arguments, const Surroundings& around) {
    const Date on = day_of(arguments, around);
    PlannedSession session = planned_to_log(arguments, arguments.words().front());
    session.mixes = PlannedSession::Mixes::left_out;
    Store store = log_store(around);
    return given(arguments,
                 log_reply("log blank", log_planned(store, around.library, session, on, money_of_log(arguments, on))));
}

CommandResult run_log_catch(const Arguments& arguments, const Surroundings& around) {
    const Date on = day_of(arguments, around);
    const CatchToLog caught = catch_to_log(arguments);
    Store store = log_store(around);
    const LogAnswer answer = log_catch(store, around.library, caught, on, money_of_log(arguments, on));
    const bool made = std::holds_alternative<LoggedSession>(answer.entered.front().entry.what);
    CommandResult result = given(arguments, log_reply("log catch", answer));
    if (!made) result.unheeded = usual_of_sessions();
    return result;
}

std::vector<Flag> flags_before(std::vector<Flag> flags, const std::vector<Flag>& more) {
    flags.insert(flags.end(), more.begin(), more.end());
    return flags;
}

}  // namespace

CommandSpec command_log_add() {
    return {
        "log add",
        "a session: from the phone's notes, or as it was planned, and what differed",
        {},
        flags_before({{"--from", "FILE", "session notes, as the phone saves them; - for standard input"},
                      {"--planned", "STRATEGY", "as this strategy plans it"},
                      {"--caught", "FISH=CATCH", R"("bream=12 9.5kg", "roach=30"; may be repeated)", true},
                      {"--water", "NAME=AMOUNT", "what you poured on a mix: \"silt bed=720ml\"; may be repeated", true},
                      {"--feel", "NAME=FEEL", "how a mix came out: \"silt bed=soft\"; may be repeated", true}},
                     log_session_flags()),
        run_log_add,
        R"(baitwright log add --planned "open carpet" --caught "bream=12 9.5kg"
baitwright log add --from notes.toml)",
        Effect::stores};
}

CommandSpec command_log_blank() {
    return {"log blank",
            "a session that caught nothing",
            {{"STRATEGY", "how you fed"}},
            log_session_flags(),
            run_log_blank,
            R"(baitwright log blank "open carpet" --hours 4h
baitwright log blank "tight balls" --on 2026-11-21 --clarity clear)",
            Effect::stores};
}

CommandSpec command_log_catch() {
    return {"log catch",
            "what was caught; it joins that day's session, or makes one",
            {},
            flags_before({{"--fish", "FISH", "which: bream"},
                          {"--count", "NUMBER", "how many"},
                          {"--mass", "MASS", "what they weighed together: 9.5kg"},
                          {"--strategy", "STRATEGY", "how you fed; makes a session where that day has none of it"}},
                         log_session_flags()),
            run_log_catch,
            R"(baitwright log catch --count 12 --mass 9.5kg --strategy "open carpet"
baitwright log catch --fish roach --count 30 --on 2026-11-21)",
            Effect::stores};
}

}  // namespace baitwright
