#include "cli/commands.h"

#include "answers/strategy/odd_strategy.h"
#include "cli/add_file.h"
#include "cli/checked.h"
#include "cli/old_versions.h"
#include "cli/result_formats.h"
#include "files/library_text.h"
#include "library/named.h"
#include "library/searched.h"
#include "report/entry_replies.h"
#include "report/replies.h"

namespace baitwright {

namespace {

CommandResult list_strategies(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<Strategy> strategies;
    for (const std::string& name : shelf->strategy_names()) strategies.push_back(shelf->strategy(name));
    return given(arguments, strategy_list_reply(those_with(arguments.words(), std::move(strategies))));
}

CommandResult show_strategy(const Arguments& arguments, const Surroundings& around) {
    if (arguments.has("--old")) return old_versions(arguments, around, EntryKind::strategy);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Strategy strategy = named_strategy(arguments.words().front(), *shelf).value;
    if (arguments.has("--toml")) return as_toml(arguments, toml_text(strategy));
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

CommandResult add_strategy(const Arguments& arguments, const Surroundings& around) {
    return add_file(arguments, around, EntryKind::strategy, arguments.words().front());
}

const Word strategy_word{"STRATEGY", "the strategy: its name, a TOML file, or - for standard input"};

}  // namespace

CommandSpec command_strategy_list() {
    return {"strategy list",
            "the ways of feeding in the library",
            {{"WORD", "only those with these words in name or notes", true, false}},
            {{"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            list_strategies,
            "baitwright strategy list\nbaitwright strategy list --csv"};
}

CommandSpec command_strategy_show() {
    return {"strategy show", "a strategy as it is written down: what goes in when, and what it is for",
            {strategy_word}, show_flags(),
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
            "add the strategies of a TOML file, and all else that it holds; old versions are kept",
            {{"FILE", "ending in .toml, or - for standard input"}},
            {},
            add_strategy,
            "baitwright strategy add my-day.toml\nbaitwright strategy add - < my-day.toml",
            Effect::stores};
}

}  // namespace baitwright
