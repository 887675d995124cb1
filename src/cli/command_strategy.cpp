#include "cli/commands.h"

#include "answers/strategy/odd_strategy.h"
#include "cli/checked.h"
#include "cli/old_versions.h"
#include "cli/result_formats.h"
#include "files/disk.h"
#include "library/all_faults.h"
#include "library/change_library.h"
#include "library/named.h"
#include "report/entry_replies.h"
#include "report/replies.h"

namespace baitwright {

namespace {

CommandResult list_strategies(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<Strategy> strategies;
    for (const std::string& name : shelf->strategy_names()) strategies.push_back(shelf->strategy(name));
    return given(arguments, strategy_list_reply(std::move(strategies)));
}

CommandResult show_strategy(const Arguments& arguments, const Surroundings& around) {
    if (arguments.has("--old")) return old_versions(arguments, around, "strategy");
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Strategy strategy = named_strategy(arguments.words().front(), *shelf).value;
    return given(arguments, strategy_reply(strategy));
}

CommandResult check_strategy(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    return checked(arguments, "strategy", [&](const std::string& given) {
        const Named<Strategy> named = named_strategy(given, *shelf);
        const UnrolledStrategy unrolled =
            with_places(named, [&] { return unroll_strategy(named.shelf(), named.value); });
        return oddities_of(named.value, unrolled);
    });
}

/// Unrolls each against what the store has; throws all their faults, each at its place.
void check_placed(const LibraryFile& file, const std::string& text, const Shelf& shelf) {
    std::vector<Fault> all;
    for (const Entry<Strategy>& entry : file.strategies) {
        try {
            static_cast<void>(unroll_strategy(shelf, entry.value));
        } catch (const InputError& error) {
            std::vector<Fault> faults = error.faults();
            place_faults(faults, entry.places, text, file.name);
            all.insert(all.end(), faults.begin(), faults.end());
        }
    }
    if (!all.empty()) throw InputError(std::move(all));
}

CommandResult add_strategy(const Arguments& arguments, const Surroundings& around) {
    if (around.library.folder)
        throw UsageError("unfit-flag", "--library reads a folder and changes nothing",
                         "leave it out, to change the store");
    const std::string& path = arguments.words().front();
    Store store = open_store(around.library.store);
    const std::string text = read_text_file(path);
    LibraryFile file = read_library_file(text, path == "-" ? "standard input" : path);
    if (!file.faults.empty()) throw InputError(all_faults(file, text, store));
    if (file.strategies.empty())
        throw InputError(fault_of_file("no-strategy", "the file holds no strategy",
                                       "a strategy has a name, a length and at least one [[feed]]", path));
    check_placed(file, text, store);
    std::vector<Strategy> strategies;
    for (Entry<Strategy>& entry : file.strategies) strategies.push_back(std::move(entry.value));
    const std::vector<EntryChange> changes = put_strategies(store, strategies, around.today);
    return given(arguments, change_reply("strategy add", names_of(changes)), left_in_file(file, path, true));
}

const Word strategy_word{"STRATEGY", "the strategy: its name, a TOML file, or - for standard input"};

}  // namespace

CommandSpec command_strategy_list() {
    return {"strategy list",
            "the ways of feeding in the library",
            {},
            {{"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            list_strategies,
            "baitwright strategy list\nbaitwright strategy list --csv"};
}

CommandSpec command_strategy_show() {
    return {"strategy show", "a strategy as it is written down: what goes in when, and what it is for",
            {strategy_word}, {{"--old", "", "the versions that were replaced"}},
            show_strategy,   R"(baitwright strategy show "open carpet"
baitwright strategy show my-day.toml)"};
}

CommandSpec command_strategy_check() {
    return {"strategy check", "everything that is wrong with a strategy, before you stand at the water",
            {strategy_word},  {},
            check_strategy,   R"(baitwright strategy check my-day.toml
baitwright strategy check "open carpet")"};
}

CommandSpec command_strategy_add() {
    return {"strategy add",
            "add the strategies of a TOML file to the store; old versions are kept",
            {{"FILE", "ending in .toml, or - for standard input"}},
            {},
            add_strategy,
            "baitwright strategy add my-day.toml\nbaitwright strategy add - < my-day.toml",
            Effect::stores};
}

}  // namespace baitwright
