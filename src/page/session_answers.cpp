#include "page/session_answers.h"

#include "answers/money/compare_strategies.h"
#include "answers/money/cost_strategy.h"
#include "answers/money/shop_sessions.h"
#include "answers/plan/plan_session.h"
#include "answers/plan/rest_of_session.h"
#include "answers/strategy/named_in_strategy.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"
#include "questions/cost_question.h"
#include "questions/plan_question.h"
#include "questions/rest_question.h"
#include "questions/shop_question.h"
#include "report/replies.h"

namespace baitwright {

namespace {

std::vector<Strategy> strategies_meant(const OpenedBank& bank, const std::vector<TimedWord>& words) {
    std::vector<Strategy> strategies;
    strategies.reserve(words.size());
    for (const TimedWord& word : words) strategies.push_back(bank.here().strategy(word.strategy));
    return strategies;
}

Venue venue_here(const OpenedBank& bank, const std::string& word) {
    std::vector<std::string> names;
    for (const Venue& venue : bank.venues) names.push_back(venue.name);
    const SaidName said = said_name(word, names);
    for (const Venue& venue : bank.venues)
        if (said.name == venue.name) return venue;
    throw NotFound(fault_of_name(word, names,
                                 {"unknown-venue", "no venue is called " + in_quotes(word),
                                  names.empty() ? "this page has none; the program makes a page with yours"
                                                : "there are: " + joined(names, ", ")}));
}

}  // namespace

Reply asked_cost(const OpenedBank& bank, const Arguments& arguments) {
    CostRequest request = cost_request(arguments, bank.today);
    const TimedWord word = timed_word(arguments.words().front());
    request.what_if.times = word.times;
    return cost_reply(cost_strategy(bank.here(), bank.here().strategy(word.strategy), bank.stock(arguments), request));
}

Reply asked_compare(const OpenedBank& bank, const Arguments& arguments) {
    const CostRequest asked = cost_request(arguments, bank.today);
    const std::vector<TimedWord> words = compared_words(arguments);
    const std::vector<Strategy> strategies = strategies_meant(bank, words);
    std::vector<std::string> meant;
    std::vector<int> times;
    std::set<std::string> fed;
    for (std::size_t i = 0; i < words.size(); ++i) {
        meant.push_back(folded_name(strategies[i].name));
        times.push_back(words[i].times);
        fed.merge(names_in(strategies[i], bank.here()));
    }
    refuse_twins(words, meant);
    const StockOnHand stock = bank.stock(arguments);
    return compare_reply(
        compare_strategies(costs_side_by_side(times, fed, asked, [&](std::size_t i, const CostRequest& request) {
            return cost_strategy(bank.here(), strategies[i], stock, request);
        })));
}

Reply asked_shop(const OpenedBank& bank, const Arguments& arguments) {
    const SessionDays days = session_days(arguments, bank.today);
    const ShopRequest request = shop_request(arguments, bank.today);
    const StrategyRequest what_if = shop_what_if(arguments);
    const std::vector<TimedWord> words = timed_words(arguments);
    const std::vector<Strategy> strategies = strategies_meant(bank, words);
    std::vector<TimedStrategy> timed;
    for (std::size_t i = 0; i < words.size(); ++i) timed.push_back({&strategies[i], words[i].times});
    const StockOnHand stock = bank.stock(arguments);
    std::vector<SessionNeed> sessions =
        sessions_in_turn(timed, stock, what_if, days, [&](std::size_t i, const StrategyRequest& asked) {
            return unroll_strategy(bank.here(), strategies[i], asked);
        });
    return shop_reply(shop_sessions(std::move(sessions), stock, request));
}

Reply asked_plan(const OpenedBank& bank, const Arguments& arguments) {
    refuse_unfit_rest_flags(arguments);
    PlanRequest request = plan_request(arguments, bank.today);
    const TimedWord word = timed_word(arguments.words().front());
    request.cost.what_if.times = word.times;
    const RestRequest asked = rest_request(arguments, request.start);
    if (const auto venue = arguments.value("--venue")) request.venue = venue_here(bank, *venue);
    const SessionPlan plan =
        plan_session(bank.here(), bank.here().strategy(word.strategy), bank.stock(arguments), request);
    if (!arguments.has("--now")) return plan_reply(plan);
    return rest_reply(plan, rest_of_session(plan, asked));
}

}  // namespace baitwright
