#include "cli/commands.h"

#include <algorithm>
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

/// Each by itself, and what is wrong with it told with its places.
std::vector<StrategyCost> costs_of(const std::vector<Named<Strategy>>& named, const std::vector<TimedWord>& words,
                                   const StockOnHand& stock, CostRequest request) {
    std::set<std::string> fed;
    for (const Named<Strategy>& one : named) fed.merge(names_in(one.value, one.shelf()));
    request.what_if = what_if_of_all(request.what_if, fed);
    const auto cost_of = [&](std::size_t i, const Currency* in) {
        request.what_if.times = words[i].times;
        request.currency = in;
        return with_places(named[i], [&] { return cost_strategy(named[i].shelf(), named[i].value, stock, request); });
    };
    return costs_in_one_currency(named.size(), cost_of, request.usual_currency);
}

void refuse_twins(const std::vector<TimedWord>& words, const std::vector<Named<Strategy>>& named) {
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (words[i].times == words[j].times && named[i].file == named[j].file &&
                folded_name(named[i].value.name) == folded_name(named[j].value.name))
                throw UsageError("twice", "'" + words[i].strategy + "' is compared with itself",
                                 "name another in its place; or the same for more sessions: \"open carpet=3\"");
}

CommandResult compare(const Arguments& arguments, const Surroundings& around) {
    check_picture(arguments);
    const CostRequest request = cost_request(arguments, around.today);
    if (arguments.words().size() < 2)
        throw UsageError("missing-word", "there is nothing to compare '" + arguments.words().front() + "' with",
                         "name two or more; what one costs says: baitwright cost");
    std::vector<TimedWord> words;
    for (const std::string& word : arguments.words()) words.push_back(timed_word(word));
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<Named<Strategy>> named;
    named.reserve(words.size());
    for (const TimedWord& word : words) named.push_back(named_strategy(word.strategy, *shelf));
    refuse_twins(words, named);
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
