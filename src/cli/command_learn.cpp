#include "cli/commands.h"

#include <algorithm>

#include "cli/log_flags.h"
#include "cli/picture_file.h"
#include "cli/result_formats.h"
#include "library/apply_learnt.h"
#include "library/learn_from_store.h"
#include "questions/read_flags.h"
#include "report/learn_plot.h"
#include "report/learn_report.h"

namespace baitwright {

namespace {

std::vector<std::int64_t> entries_of(const Arguments& arguments, const std::string& flag) {
    std::vector<std::int64_t> entries;
    for (const std::string& text : arguments.values(flag))
        entries.push_back(flag_value(flag, [&] { return read_count(text, "for example 12: baitwright log list"); }));
    return entries;
}

/// What changed, as it is told.
std::vector<std::string> learnt_names(const LearntApplied& applied) {
    std::vector<std::string> names;
    if (applied.water) names.emplace_back("your hand");
    for (const auto* list : {&applied.ingredients, &applied.mixes})
        for (const std::string& name : *list)
            if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
    return names;
}

CommandResult run_learn(const Arguments& arguments, const Surroundings& around) {
    check_picture(arguments);
    if (arguments.has("--apply") && arguments.has("--try"))
        throw UsageError("two-wishes", "it cannot be kept and only be shown", "give --apply or --try");
    Store store = log_store(around);
    set_belief(store, entries_of(arguments, "--believe"), Belief::believed);
    set_belief(store, entries_of(arguments, "--doubt"), Belief::judged);
    LearnReport report{learn_from_store(store, around.today)};
    if (arguments.has("--apply")) {
        report.written = learnt_names(apply_learnt(store, report.answer, around.today));
        report.done = report.written.empty() ? LearnReport::Done::nothing_to_write : LearnReport::Done::written;
    } else if (stands_already(store, report.answer)) {
        report.done = LearnReport::Done::stands_already;
    }
    if (arguments.has("--plot")) write_picture(arguments, learn_plot(report.answer));
    return given(arguments, learn_reply(std::move(report)));
}

CommandResult run_learn_undo(const Arguments& arguments, const Surroundings& around) {
    Store store = log_store(around);
    const LearntApplied undone =
        arguments.has("--all") ? forget_learnt(store, around.today) : undo_learnt(store, around.today);
    return given(arguments, learn_undone_reply(learnt_names(undone)));
}

}  // namespace

CommandSpec command_learn() {
    CommandSpec spec{"learn",
                     "what your log says of your hand and your bags, and how far your water may be off",
                     {},
                     {{"--apply", "", "let the answers go by it from now on; the old values are kept"},
                      {"--try", "", "only show it, as without any flag"},
                      {"--believe", "NUMBER", "this entry of the log is true, however far off; may be repeated", true},
                      {"--doubt", "NUMBER", "judge this entry by the others again; may be repeated", true},
                      {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
                     run_learn,
                     R"(baitwright learn
baitwright learn --apply)",
                     Effect::stores};
    for (const Flag& flag : picture_flags()) spec.flags.push_back(flag);
    return spec;
}

CommandSpec command_learn_undo() {
    return {"learn undo",
            "take back what was kept last of what the log says; the log stays",
            {},
            {{"--all", "", "all that was ever kept: the answers go by the library again"}},
            run_learn_undo,
            R"(baitwright learn undo
baitwright learn undo --all)",
            Effect::stores};
}

}  // namespace baitwright
