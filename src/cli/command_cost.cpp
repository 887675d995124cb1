#include "cli/command_cost.h"

#include <algorithm>

#include "answers/money/compare_strategies.h"
#include "cli/cost_flags.h"
#include "cli/picture_file.h"
#include "cli/result_formats.h"
#include "library/named.h"
#include "quantities/suggestion.h"
#include "report/cost_report.h"

namespace baitwright {

namespace {

std::string in_format(const Arguments& arguments, const Json& json, const Rows& rows, const std::string& text) {
    return arguments.has("--json") ? json_text(json) : arguments.has("--csv") ? csv_of_rows(rows) : text;
}

CommandResult cost(const Arguments& arguments, const Surroundings& around) {
    check_picture(arguments);
    CostRequest request = cost_request(arguments, around.today);
    const TimedWord word = timed_word(arguments.words().front());
    request.what_if.times = word.times;
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Named<Strategy> named = named_strategy(word.strategy, *shelf);
    const UnrolledStrategy unrolled = with_places(named, [&] { return unroll_strategy(named.shelf(), named.value); });
    const StockOnHand stock = stock_on_hand(arguments, named.shelf(), around, unrolled.totals);
    const StrategyCost found =
        with_places(named, [&] { return cost_strategy(named.shelf(), named.value, stock, request); });
    const std::string plotted = write_plot(arguments, {found});
    return {in_format(arguments, cost_json(found), cost_rows({found}), cost_text(found) + plotted),
            found.complete() ? 0 : 1};
}

/// Everything that is wrong with a strategy itself is told with its places before any is costed.
std::vector<Contender> contenders(const std::vector<Named<Strategy>>& named, const std::vector<TimedWord>& words,
                                  std::vector<IngredientNeed>& needs) {
    std::vector<Contender> found;
    for (std::size_t i = 0; i < named.size(); ++i) {
        const UnrolledStrategy unrolled =
            with_places(named[i], [&] { return unroll_strategy(named[i].shelf(), named[i].value); });
        add_unlisted(needs, unrolled.totals);
        found.push_back({&named[i].shelf(), named[i].value, words[i].times});
    }
    return found;
}

void refuse_twins(const std::vector<TimedWord>& words) {
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (words[i].times == words[j].times && folded_name(words[i].strategy) == folded_name(words[j].strategy))
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
    refuse_twins(words);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<Named<Strategy>> named;
    named.reserve(words.size());
    for (const TimedWord& word : words) named.push_back(named_strategy(word.strategy, *shelf));
    std::vector<IngredientNeed> needs;
    const std::vector<Contender> compared = contenders(named, words, needs);
    const StockOnHand stock = stock_on_hand(arguments, *shelf, around, needs);
    const StrategyComparison found = compare_strategies(compared, stock, request);
    const std::string plotted = write_plot(arguments, found.costs);
    const bool complete =
        std::all_of(found.costs.begin(), found.costs.end(), [](const StrategyCost& cost) { return cost.complete(); });
    return {in_format(arguments, compare_json(found), cost_rows(found.costs), compare_text(found) + plotted),
            complete ? 0 : 1};
}

}  // namespace

CommandSpec command_cost() {
    return {"cost",
            "what a session costs: used, to pay in whole packs, left over, and how sure",
            {{"STRATEGY", "its name, a TOML file, or - for standard input; NAME=3 for three sessions"}},
            cost_flags(),
            cost,
            "baitwright cost \"open carpet\" --length 3h"};
}

CommandSpec command_compare() {
    return {"compare",
            "strategies side by side: what each costs, and what makes the difference",
            {{"STRATEGY", "two or more: names or TOML files; NAME=3 for three sessions", true}},
            cost_flags(),
            compare,
            R"(baitwright compare "open carpet" "tight balls" "pellet led")"};
}

}  // namespace baitwright
