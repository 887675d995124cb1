#include "cli/page_contents.h"

#include <algorithm>

#include "answers/money/cost_strategy.h"
#include "answers/shared/stale_prices.h"
#include "cli/cost_flags.h"
#include "library/advice_rules.h"
#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

/// More than a phone enters in years.
constexpr std::size_t most_marks = 1000;

/// What a phone told of its shed, and the store has taken in.
std::vector<std::string> taken_home(const Surroundings& around) {
    if (around.library.folder) return {};
    Store store = open_store(around.library);
    return store.shed().newest_marks(most_marks);
}

/// The strategies, each sound and each once.
std::vector<Named<Strategy>> strategies_of(const Arguments& arguments, const Shelf& shelf) {
    std::vector<Named<Strategy>> named;
    for (const std::string& word : arguments.words()) {
        named.push_back(named_strategy(word, shelf));
        const std::string& name = named.back().value.name;
        if (std::count_if(named.begin(), named.end(), [&](const Named<Strategy>& one) {
                return folded_name(one.value.name) == folded_name(name);
            }) > 1)
            throw UsageError("named-twice", in_quotes(name) + " is named twice", "name each strategy once");
    }
    return named;
}

/// What is asked and told of the page beside its strategies.
BankContents contents_beside(const Arguments& arguments, const Surroundings& around, const Shelf& shelf) {
    BankContents contents;
    contents.library = &shelf;
    contents.made_on = around.today;
    contents.version = around.version;
    contents.usual_currency = usual_currency(arguments);
    contents.always = arguments.all_usual();
    read_flag(arguments, "--start", [&](const std::string& text) { contents.start = parse_clock(text); });
    read_flag(arguments, "--people",
              [&](const std::string& text) { contents.people = read_count(text, "for example --people 4"); });
    contents.advice = advice_rules(around.library);
    contents.venues = all_venues(around.library);
    return contents;
}

/// By whose rules the plan is told in plain words; nothing where none is usual.
std::optional<Venue> usual_venue(const Arguments& arguments, const Surroundings& around, const Shelf& shelf) {
    const auto word = arguments.usual("venue");
    if (!word) return std::nullopt;
    return named_venue(*word, around.library, shelf).value;
}

}  // namespace

PageContents page_contents(const Arguments& arguments, const Surroundings& around) {
    PageContents page;
    page.library = open_library(around.library);
    page.named = strategies_of(arguments, *page.library);
    page.contents = contents_beside(arguments, around, *page.library);
    for (const Named<Strategy>& strategy : page.named) {
        with_places(strategy,
                    [&] { return unroll_strategy(strategy.shelf(), strategy.value); });  // tells what is wrong with it
        page.contents.strategies.push_back({&strategy.shelf(), strategy.value});
    }
    const Shelf& shelf = page.named.empty() ? *page.library : page.named.front().shelf();
    page.contents.stock = stock_on_hand(arguments, shelf, around);
    page.contents.taken_home = taken_home(around);
    page.venue = usual_venue(arguments, around, shelf);
    return page;
}

std::vector<Warning> unpriced_on_page(const BankContents& contents) {
    std::vector<std::string> names;
    std::vector<Warning> warnings;
    CostRequest request;
    request.on = contents.made_on;
    request.usual_currency = contents.usual_currency;
    request.what_if.people = contents.people;
    request.ranges = CostRequest::Ranges::left_out;
    for (const CarriedStrategy& carried : contents.strategies) {
        const StrategyCost cost = cost_strategy(*carried.shelf, carried.strategy, contents.stock, request);
        for (const std::string& name : priced_nowhere(cost.unpriced, cost.elsewhere))
            if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
        if (cost.elsewhere.empty()) continue;
        const std::string cost_there = "the cost of " + in_quotes(carried.strategy.name) + " on the page";
        warnings.push_back(
            other_currency_warning(cost.elsewhere, *cost.currency, leaves_out(cost_there, cost.elsewhere.size())));
    }
    if (auto unpriced = no_price_warning(names, "the cost on the page"))
        warnings.insert(warnings.begin(), *std::move(unpriced));
    return warnings;
}

}  // namespace baitwright
