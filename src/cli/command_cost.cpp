#include "cli/commands.h"

#include <set>

#include "answers/money/compare_strategies.h"
#include "answers/strategy/named_in_strategy.h"
#include "cli/cost_flags.h"
#include "cli/picture_file.h"
#include "cli/result_formats.h"
#include "library/named.h"
#include "quantities/suggestion.h"
#include "report/replies.h"

namespace baitwright {

namespace {

CommandResult cost(const Arguments& arguments, const Surroundings& around) {
    check_picture(arguments);
    CostRequest request = cost_request(arguments, around.today);
    const TimedWord word = timed_word(arguments.words().front());
    request.what_if.times = word.times;
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Named<Strategy> named = named_strategy(word.strategy, *shelf);
    const StockOnHand stock = stock_on_hand(arguments, named.shelf(), around);
    const StrategyCost found =
        with_places(named, [&] { return cost_strategy(named.shelf(), named.value, stock, request); });
    const std::string plotted = write_plot(arguments, {found});
    return given(arguments, cost_reply(found), plotted);
}

/// What is wrong with one is told with its places.
std::vector<StrategyCost> costs_of(const std::vector<Named<Strategy>>& named, const std::vector<TimedWord>& words,
                                   const StockOnHand& stock, const CostRequest& asked) {
    std::set<std::string> fed;
    for (const Named<Strategy>& one : named) fed.merge(names_in(one.value, one.shelf()));
    std::vector<int> times;
    times.reserve(words.size());
    for (const TimedWord& word : words) times.push_back(word.times);
    return costs_side_by_side(times, fed, asked, [&](std::size_t i, const CostRequest& request) {
        return with_places(named[i], [&] { return cost_strategy(named[i].shelf(), named[i].value, stock, request); });
    });
}

/// What each word means: a file's strategy is another than the library's of that name.
std::vector<std::string> meant_by(const std::vector<Named<Strategy>>& named) {
    std::vector<std::string> meant;
    meant.reserve(named.size());
    for (const Named<Strategy>& one : named) meant.push_back(one.file + "\n" + folded_name(one.value.name));
    return meant;
}

CommandResult compare(const Arguments& arguments, const Surroundings& around) {
    check_picture(arguments);
    const CostRequest request = cost_request(arguments, around.today);
    const std::vector<TimedWord> words = compared_words(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<Named<Strategy>> named;
    named.reserve(words.size());
    for (const TimedWord& word : words) named.push_back(named_strategy(word.strategy, *shelf));
    refuse_twins(words, meant_by(named));
    const StockOnHand stock = stock_on_hand(arguments, *shelf, around);
    const StrategyComparison found = compare_strategies(costs_of(named, words, stock, request));
    const std::string plotted = write_plot(arguments, found.costs);
    return given(arguments, compare_reply(found), plotted);
}

}  // namespace

CommandSpec command_cost() {
    return {"cost",
            "what a session costs: used, to pay in whole packs, left over, and how sure",
            {{"STRATEGY", "its name, a TOML file, or - for standard input; NAME=3 for three sessions"}},
            cost_flags(),
            cost,
            R"(baitwright cost "open carpet" --length 3h
baitwright cost "open carpet" --price "brown crumb=£2.10/kg")"};
}

CommandSpec command_compare() {
    return {"compare",
            "strategies side by side: what each costs, and what makes the difference",
            {{"STRATEGY", "two or more: names or TOML files; NAME=3 for three sessions", true}},
            cost_flags(),
            compare,
            R"(baitwright compare "open carpet" "tight balls" "pellet led"
baitwright compare "open carpet" "pellet led" --length 3h --people 2)"};
}

}  // namespace baitwright
