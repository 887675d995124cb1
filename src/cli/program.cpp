#include "cli/program.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdlib>
#include <ctime>

#include "cli/commands.h"
#include "cli/dry_run.h"
#include "cli/for_machines.h"
#include "cli/help.h"
#include "cli/help_topics.h"
#include "cli/new_store_told.h"
#include "cli/old_flags.h"
#include "cli/output_file.h"
#include "cli/parse_arguments.h"
#include "cli/terminal.h"
#include "cli/usual_place.h"
#include "cli/usual_told.h"
#include "cli/version.h"
#include "cli/ways_out.h"
#include "quantities/date.h"
#include "quantities/in_quotes.h"
#include "quantities/plain_words.h"
#include "questions/shown_units_of.h"
#include "report/fault_text.h"
#include "report/json.h"
#include "report/shown_units.h"

namespace baitwright {

namespace {

bool asks_for_help(const std::string& word) {
    return word == "--help" || word == "-h" || word == "help";
}

/// The day by the machine's clock, or the one that BAITWRIGHT_TODAY holds: to look ahead or back, and for tests.
Date today() {
    if (const std::string given = environment("BAITWRIGHT_TODAY"); !given.empty())
        return flag_value("BAITWRIGHT_TODAY", [&] { return parse_date(given); });
    const std::time_t now = std::chrono::system_clock::to_time_t(std::chrono::system_clock::now());
    std::tm local{};
    localtime_r(&now, &local);
    return std::chrono::year_month_day{std::chrono::year(local.tm_year + 1900),
                                       std::chrono::month(static_cast<unsigned>(local.tm_mon + 1)),
                                       std::chrono::day(static_cast<unsigned>(local.tm_mday))};
}

Surroundings surroundings(const Arguments& arguments) {
    Surroundings around;
    around.today = today();
    around.version = BAITWRIGHT_VERSION;
    if (const auto folder = arguments.value("--library")) around.library.folder = *folder;
    if (const auto store = arguments.value("--store")) {
        if (around.library.folder)
            throw UsageError("two-libraries", "--store and --library were both given", "give one of them");
        if (store->empty()) throw UsageError("no-file", "--store needs a file's name", "for example --store shed.db");
        around.library.store = *store;
    } else if (!around.library.folder) {
        around.library.store = usual_store();
    }
    return around;
}

/// The command whose words the line begins with; the longest wins.
const CommandSpec* find_command(const std::vector<std::string>& given, std::size_t& words) {
    const CommandSpec* found = nullptr;
    words = 0;
    for (const CommandSpec& command : all_commands()) {
        const auto blank = command.verb.find(' ');
        const bool two = blank != std::string_view::npos;
        if (given[0] != command.verb.substr(0, blank)) continue;
        if (two && (given.size() < 2 || given[1] != command.verb.substr(blank + 1))) continue;
        found = &command;
        words = two ? 2 : 1;
    }
    return found;
}

/// Every word passes the gate that files pass, so that none is stored or shown that drives a terminal.
void refuse_unfit_words(const std::vector<std::string>& words) {
    for (const std::string& word : words)
        if (const std::string unfit = unfit_in(word); !unfit.empty())
            throw UsageError("unfit-letter", "the word " + in_quotes(word) + " holds " + unfit,
                             "write it in plain letters; a file with such a name must be renamed first");
}

/// Help is longer than a screen: it may go through a pager.
CommandResult help_shown(std::string text) {
    return {std::move(text), 0, OutputForm::listed};
}

/// A list may be as long as the library, or the log.
bool is_list(const CommandSpec& command) {
    const std::string_view verb = command.verb;
    return verb.ends_with(" list") || verb.ends_with(" history") || verb == "find" || verb == "stock";
}

/// Help with the command, the group or the topic that these words begin with; with everything where there are no words.
std::string help_with(const std::vector<std::string>& words) {
    if (words.empty() || asks_for_help(words[0])) return help_text();
    std::size_t used = 0;
    if (const CommandSpec* command = find_command(words, used)) return help_text(*command);
    std::string text = help_of_group(words[0]);
    if (text.empty()) text = topic_text(words[0]);
    if (text.empty()) refuse_help(words);
    return text;
}

/// "mix help", "stock buy help", "recipe list help": words that meant help, for as they stand they were refused.
bool meant_help(const std::vector<std::string>& rest, const Error& refusal) {
    if (rest.empty() || rest.back() != "help") return false;
    const bool refused = refusal.fault_class() == FaultClass::usage || refusal.fault_class() == FaultClass::not_found;
    return refusal.faults().front().code == "surplus-word" || (rest.size() == 1 && refused);
}

/// What stays done where the answer of a run that went well cannot be written.
std::string done_by(const CommandSpec& command, const Arguments& arguments) {
    if (command.effect == Effect::keeps) return "what you asked for is done all the same";
    const bool stored = command.effect == Effect::stores || arguments.has("--book") || arguments.has("--save");
    return stored ? "what you asked for is in the store all the same; look there before you type it again" : "";
}

std::vector<CommandSpec> made_commands() {
    std::vector<CommandSpec> commands{
        command_mix(),  command_water(),   command_soak(),  command_dose(),   command_drop(), command_dry(),
        command_cost(), command_compare(), command_plan(),  command_advise(), command_card(), command_page(),
        command_shop(), command_swap(),    command_blend(), command_find(),   command_usual()};
    const auto add = [&](std::initializer_list<CommandSpec> more) { commands.insert(commands.end(), more); };
    const auto add_own = [&](EntryKind kind) {
        for (CommandSpec& own : commands_of_own_entries(kind)) commands.push_back(std::move(own));
    };
    add({command_ingredient_list(), command_ingredient_show(), command_ingredient_add(), command_ingredient_measure()});
    add_own(EntryKind::ingredient);
    add({command_ingredient_import(), command_ingredient_export()});
    add({command_recipe_list(), command_recipe_show(), command_recipe_check(), command_recipe_add()});
    add_own(EntryKind::mix);
    add({command_strategy_list(), command_strategy_show(), command_strategy_check(), command_strategy_add()});
    add_own(EntryKind::strategy);
    add({command_venue_list(), command_venue_show(), command_venue_check(), command_venue_add()});
    add_own(EntryKind::venue);
    add({command_blend_list(), command_blend_show(), command_blend_check(), command_blend_add()});
    add_own(EntryKind::blend);
    add({command_stock(), command_stock_history(), command_stock_buy(), command_stock_keep(), command_stock_count(),
         command_stock_use(), command_stock_waste(), command_stock_undo(), command_stock_session(), command_price(),
         command_price_list(), command_price_history(), command_price_convert()});
    add({command_log_add(), command_log_blank(), command_log_catch(), command_log_mix(), command_log_soak(),
         command_log_weigh(), command_log_drop(), command_log_bag(), command_log_list(), command_log_show(),
         command_log_edit(), command_log_undo(), command_log_notes(), command_learn(), command_learn_undo(),
         command_paid()});
    add({command_backup(), command_restore(), command_merge(), command_doctor(), command_export(), command_import()});
    add_dry_run(commands);
    return commands;
}

/// What the command says, fit to be shown, with what is said besides.
CommandResult what_it_says(const CommandSpec& command, const Arguments& arguments, const Surroundings& around,
                           const NamedStore& named_store) {
    CommandResult result = command.run(arguments, around);
    if (result.form == OutputForm::bytes) return result;
    if (!arguments.has("--json")) result.output = written_out(result.output, LineBreaks::allowed);
    tell_usual(result, arguments);
    if (command.effect != Effect::keeps) named_store.tell(result, arguments);
    if (result.form == OutputForm::told && is_list(command)) result.form = OutputForm::listed;
    return result;
}

CommandResult run_command(const CommandSpec& command, const std::vector<std::string>& rest) {
    refuse_unfit_words(rest);
    Arguments arguments = parse_arguments(command, rest);
    if (arguments.has("--json") && arguments.has("--csv"))
        throw UsageError("two-formats", "--json and --csv were both given", "give one of them");
    Surroundings around = surroundings(arguments);
    refuse_store_as_output(command, arguments, around.library.store);
    const NamedStore named_store(arguments);
    try {
        const DryRun dry_run(command, arguments, around.library.store);
        if (command.effect != Effect::keeps) give_usual(arguments, command, usual_of(around.library));
        show_units(shown_units_of(arguments));
        CommandResult result = what_it_says(command, arguments, around, named_store);
        around.library.ahead.reset();  // before what was only tried is taken away
        if (result.status == 0 && !arguments.has("--dry-run")) result.done_already = done_by(command, arguments);
        dry_run.tell(result, arguments);
        result.aside += old_flags_told(command, rest);
        return result;
    } catch (const Error& error) {
        throw named_store.told(error);
    }
}

}  // namespace

const std::vector<Flag>& common_flags() {
    static const std::vector<Flag> flags{
        {"--json", "", "the answer as JSON, unrounded"},
        {"--store", "FILE", "use this store in place of the usual one"},
        {"--library", "FOLDER", "read the TOML files below this folder instead"},
    };
    return flags;
}

const std::vector<CommandSpec>& all_commands() {
    static const std::vector<CommandSpec> commands = made_commands();
    return commands;
}

CommandResult run_program(const std::vector<std::string>& given) {
    if (given.empty())
        throw UsageError("no-command", "say what you want to know",
                         "see: baitwright --help; or try: baitwright mix \"silt bed\" --wet-volume 3l");
    if (is_for_machines(given[0])) return run_for_machines(given);
    if (asks_for_help(given[0])) return help_shown(help_with({given.begin() + 1, given.end()}));
    if (given[0] == "--version") return {version_text(), 0};
    if (std::any_of(given.begin(), end_of_flags(given),
                    [](const std::string& word) { return word == "--help" || word == "-h"; }))
        return help_shown(help_with(given));
    std::size_t words = 0;
    const CommandSpec* command = find_command(given, words);
    if (!command && given.size() == 2 && given[1] == "help") return help_shown(help_with(given));
    if (!command) refuse_command(given);
    const std::vector<std::string> rest(given.begin() + static_cast<std::ptrdiff_t>(words), given.end());
    try {
        return run_command(*command, rest);
    } catch (const Error& refusal) {
        if (meant_help(rest, refusal)) return help_shown(help_text(*command));
        throw;
    }
}

bool wants_json(const std::vector<std::string>& given) {
    return std::find(given.begin(), end_of_flags(given), "--json") != end_of_flags(given);
}

std::string error_text(const Error& error, const std::vector<std::string>& given) {
    return wants_json(given) ? json_text(json_of_faults(error.faults())) : fault_text(error.faults());
}

int exit_status(FaultClass fault_class) {
    switch (fault_class) {
        case FaultClass::answer_is_no:
            return 1;
        case FaultClass::usage:
            return 64;
        case FaultClass::bad_data:
            return 65;
        case FaultClass::not_found:
            return 66;
        case FaultClass::cannot_create:
            return 73;
        case FaultClass::input_output:
            return 74;
        case FaultClass::try_again:
            return 75;
        case FaultClass::interrupted:
            return 130;
    }
    return 70;
}

}  // namespace baitwright
