#include "cli/commands.h"

#include "answers/money/shop_sessions.h"
#include "cli/cost_flags.h"
#include "cli/result_formats.h"
#include "library/named.h"
#include "questions/shop_question.h"
#include "report/replies.h"

namespace baitwright {

namespace {

std::vector<SessionNeed> sessions_of(const std::vector<TimedWord>& words, const Shelf& shelf, const StockOnHand& stock,
                                     const StrategyRequest& what_if, SessionDays days) {
    std::vector<Named<Strategy>> named;
    named.reserve(words.size());
    std::vector<TimedStrategy> strategies;
    for (const TimedWord& word : words) {
        named.push_back(named_strategy(word.strategy, shelf));
        strategies.push_back({&named.back().value, word.times});
    }
    return sessions_in_turn(strategies, stock, what_if, days, [&](std::size_t i, const StrategyRequest& request) {
        return with_places(named[i], [&] { return unroll_strategy(named[i].shelf(), named[i].value, request); });
    });
}

CommandResult shop(const Arguments& arguments, const Surroundings& around) {
    const SessionDays days = session_days(arguments, around.today);
    const ShopRequest request = shop_request(arguments, around.today);
    const StrategyRequest what_if = shop_what_if(arguments);
    const std::vector<TimedWord> words = timed_words(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const StockOnHand stock = stock_on_hand(arguments, *shelf, around);
    std::vector<SessionNeed> sessions = sessions_of(words, *shelf, stock, what_if, days);
    ShopAnswer answer = shop_sessions(std::move(sessions), stock, request);
    const bool goes_where_usual = answer.rather_at.has_value();
    CommandResult result = given(arguments, shop_reply(std::move(answer)));
    if (!goes_where_usual) result.unheeded.emplace_back("--at");
    return result;
}

}  // namespace

CommandSpec command_shop() {
    return {"shop",
            "what to buy for one or many sessions: the cheapest whole packs, on top of what the shed holds",
            {{"STRATEGY", "names or TOML files, in the order of the sessions; NAME=3 for three of them", true}},
            {{"--on", "DATE", "the day of the first session: 2026-11-28 (default: today)"},
             {"--every", "TIME", "from one session to the next, in whole days (default: 7d)"},
             {"--people", "NUMBER", "how many anglers, each feeding all of it", false, "people"},
             {"--at", "SHOP", "buy only at this shop; may be repeated", true, "shop"},
             {"--one-shop", "", "buy all of it at one shop"},
             {"--delivery", "SHOP=CHARGE", "what a shop charges to deliver, once: \"the mill=£4.50\"; may be repeated",
              true},
             {"--most-left", "MASS", "leave no more than this over of anything you buy"},
             have_flag(),
             {"--empty-shed", "", "as if nothing were in the shed"},
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            shop,
            R"(baitwright shop "open carpet=6" "tight balls=2" --every 7d
baitwright shop "open carpet" --one-shop)"};
}

}  // namespace baitwright
