#include "cli/commands.h"

#include <algorithm>

#include "cli/log_flags.h"
#include "cli/output_file.h"
#include "cli/result_formats.h"
#include "cli/run_editor.h"
#include "files/disk.h"
#include "files/notes_text.h"
#include "library/log_notes.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/loose_words.h"
#include "questions/log_question.h"
#include "questions/read_flags.h"
#include "report/log_report.h"
#include "report/log_words.h"
#include "report/told.h"

namespace baitwright {

namespace {

/// As much as one looks through.
constexpr std::size_t most_groups_shown = 40;

/// All words of a group that can be looked for.
std::string words_of(const LoggedGroup& group) {
    std::string words = log_kind_text(group.entry.what) + " " + log_group_text(group);
    if (const auto* session = std::get_if<LoggedSession>(&group.entry.what))
        words += " " + session->venue + " " + session->clarity + " " + session->note;
    for (const LogEntry& entry : group.belonging) words += " " + log_entry_text(entry.what);
    return words;
}

bool holds_all(const std::string& text, const std::vector<std::string>& said) {
    const std::vector<LooseWord> words = loose_words(text);
    for (const std::string& one_said : said)
        for (const LooseWord& word : loose_words(one_said))
            if (std::none_of(words.begin(), words.end(), [&](const LooseWord& there) {
                    return same_word(word, there) || begins_word(word, there);
                }))
                return false;
    return true;
}

CommandResult run_log_list(const Arguments& arguments, const Surroundings& around) {
    std::optional<Date> since;
    read_flag(arguments, "--since", [&](const std::string& text) { since = parse_date(text); });
    Store store = log_store(around);
    LogListAnswer answer;
    const std::vector<LoggedGroup> all = grouped(store.log().entries());
    for (const LoggedGroup& group : all)
        if ((!since || group.entry.on >= *since) && holds_all(words_of(group), arguments.words()))
            answer.groups.push_back(group);
    if (answer.groups.empty() && !all.empty())
        throw Error(
            FaultClass::answer_is_no,
            Fault{"nothing-found",
                  arguments.words().empty() ? "the log has nothing since " + date_text(*since)
                                            : "nothing in the log holds " + in_quotes(joined(arguments.words(), " ")),
                  "see all of it with: baitwright log list"});
    const bool everything = arguments.has("--all") || arguments.has("--json") || arguments.has("--csv");
    if (!everything && answer.groups.size() > most_groups_shown) {
        answer.not_shown = answer.groups.size() - most_groups_shown;
        answer.groups.erase(answer.groups.begin(),
                            answer.groups.begin() + static_cast<std::ptrdiff_t>(answer.not_shown));
    }
    return given(arguments, log_list_reply(answer));
}

CommandResult run_log_show(const Arguments& arguments, const Surroundings& around) {
    const std::int64_t id = read_log_number(arguments.words().front());
    Store store = log_store(around);
    const LogEntry entry = entry_numbered(store.log(), id);
    if (!std::holds_alternative<LoggedSession>(entry.what)) return given(arguments, log_shown_reply({entry, {}}));
    return given(arguments, log_shown_reply(group_of(store.log(), entry)));
}

/// What was taken back out of a session leaves the session, perhaps as a blank: that is not to go unseen.
void tell_of_session_left(const LogBook& log, LogAnswer& answer) {
    if (answer.undone.empty() || answer.undone.front().session == 0) return;
    const std::int64_t session = answer.undone.front().session;
    const std::optional<LogEntry> left = log.find(session);
    if (!left || left->undone_by != 0) return;
    const std::string number = std::to_string(session);
    answer.warnings.push_back({"session-stands", "its session stands in the log, number " + number + ", " +
                                                     log_group_text(group_of(log, *left)) +
                                                     "; to take that back too: baitwright log undo " + number});
}

CommandResult run_log_undo(const Arguments& arguments, const Surroundings& around) {
    std::optional<std::int64_t> id;
    if (!arguments.words().empty()) id = read_log_number(arguments.words().front());
    Store store = log_store(around);
    LogAnswer answer;
    store.change([&] {
        answer.undone = store.log().undo(id, around.today);
        tell_of_session_left(store.log(), answer);
    });
    return given(arguments, log_reply("log undo", answer));
}

/// What is edited: the session that the entry belongs to, or the entry.
LoggedGroup group_to_edit(const Store& store, std::int64_t id) {
    const LogEntry entry = entry_numbered(store.log(), id);
    if (entry.undone_by != 0 || std::holds_alternative<LogUndone>(entry.what))
        throw Error(
            FaultClass::answer_is_no,
            Fault{"cannot-edit",
                  entry.undone_by != 0
                      ? "number " + std::to_string(id) + " was taken back, by number " + std::to_string(entry.undone_by)
                      : "number " + std::to_string(id) + " takes another back, and has nothing to edit",
                  "see what stands with: baitwright log list"});
    return group_of(store.log(), entry);
}

/// What went wrong with the edited text is told with where that text is: it is not lost.
[[noreturn]] void rethrow_with_notes(const Error& error, const std::string& path) {
    std::vector<Fault> faults = error.faults();
    faults.back().hint +=
        (faults.back().hint.empty() ? "" : "; ") + ("nothing was changed, and your text is kept in " + path);
    throw Error(error.fault_class(), std::move(faults));
}

CommandResult run_log_edit(const Arguments& arguments, const Surroundings& around) {
    const std::int64_t id = read_log_number(arguments.words().front());
    std::string before;
    std::int64_t edited = 0;
    {
        const Store store = log_store(around);  // closed while the person edits
        const LoggedGroup group = group_to_edit(store, id);
        edited = group.entry.id;
        before = notes_to_edit(store, group);
    }
    const std::filesystem::path path = file_to_edit("log-" + std::to_string(edited), before);
    run_editor(path);
    LogAnswer answer;
    try {
        const std::string text = read_text_file(path);
        Store store = log_store(around);
        if (text == before)
            answer.warnings.push_back({"unchanged", "you changed nothing, so the log stays as it is"});
        else
            answer =
                replace_by_notes(store, around.library, edited,
                                 read_notes(text, path.string(), around.today + std::chrono::days(1)), around.today);
    } catch (const Error& error) {
        rethrow_with_notes(error, path.string());
    }
    std::error_code failed;
    std::filesystem::remove(path, failed);
    return given(arguments, log_reply("log edit", answer));
}

CommandResult run_log_notes(const Arguments& arguments, const Surroundings& around) {
    if (arguments.has("--json"))
        throw UsageError("unfit-flag", "notes are TOML, not JSON",
                         "leave --json out; as JSON the log comes with: baitwright log list --json");
    const auto path = arguments.value("-o");
    if (arguments.has("--replace") && !path)
        throw UsageError("unfit-flag", "--replace goes with -o", "leave it out, or add -o log.toml");
    const std::string text = notes_text(log_store(around).log().entries());
    if (!path || *path == "-") return {text, 0};
    keep_unless_told(*path, arguments);
    write_text_file(*path, text);
    Told told;
    told.say("The log is in " + *path + "; elsewhere it is taken in by: baitwright log add --from " + *path);
    return {told.text(), 0};
}

const Word number_word{"NUMBER", "as the list shows it"};

}  // namespace

CommandSpec command_log_list() {
    return {"log list",
            "what is in the log, by day",
            {{"WORD", "only what holds these words", true, false}},
            {{"--since", "DATE", "only from that day on: 2026-09-01"},
             {"--all", "", "all of a long log, not just the last 40"},
             {"--csv", "", "as CSV for a spreadsheet, a row for each entry, unrounded"}},
            run_log_list,
            "baitwright log list\nbaitwright log list bream --since 2026-09-01"};
}

CommandSpec command_log_show() {
    return {"log show",    "one entry, and all that belongs to it",
            {number_word}, {},
            run_log_show,  "baitwright log show 1\nbaitwright log show 1 --json"};
}

CommandSpec command_log_edit() {
    return {"log edit",    "change a session or an entry in your editor; the old one is taken back, and kept",
            {number_word}, {},
            run_log_edit,  "baitwright log edit 1\nbaitwright log edit 1 --json",
            Effect::stores};
}

CommandSpec command_log_undo() {
    return {"log undo",
            "take an entry back, with a session all that belongs to it; the log keeps it, and the undoing too",
            {{"NUMBER", "as the list shows it (default: the last one)", false, false}},
            {},
            run_log_undo,
            "baitwright log undo\nbaitwright log undo 3",
            Effect::stores};
}

CommandSpec command_log_notes() {
    return {"log notes",
            "the whole log as session notes, to keep or to carry to another machine",
            {},
            {{"-o", "FILE", "write them to this file, not to the screen: log.toml"},
             {"--replace", "", "lets -o write over a file that is there"}},
            run_log_notes,
            "baitwright log notes -o log.toml\nbaitwright log notes"};
}

}  // namespace baitwright
