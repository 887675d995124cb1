#include "cli/command_shop.h"

#include <algorithm>
#include <cmath>

#include "answers/shop_sessions.h"
#include "cli/cost_flags.h"
#include "cli/result_formats.h"
#include "questions/read_flags.h"
#include "report/shop_report.h"
#include "shelf/strategy_argument.h"

namespace baitwright {

namespace {

constexpr int usual_gap = 7;  // days
constexpr std::size_t most_sessions = 400;

/// When the sessions are.
struct Calendar {
    Date first;
    int gap = usual_gap;
};

Calendar calendar(const Arguments& arguments, const Surroundings& around) {
    Calendar days{parse_date(around.today)};
    read_flag(arguments, "--on", [&](const std::string& text) { days.first = parse_date(text); });
    read_flag(arguments, "--every", [&](const std::string& text) {
        const double gap = parse<Time>(text).in(day);
        if (gap < 1 || gap > 366 || gap != std::floor(gap))
            throw InputError("out-of-range", "sessions are whole days apart, from 1 d to 366 d", "as in --every 7d");
        days.gap = static_cast<int>(gap);
    });
    return days;
}

ShopRequest::Delivery read_delivery(const std::string& text) {
    const auto [shop, charge] = parted_at_equals(text, "what it asks for bringing it", "--delivery \"the mill=£4.50\"");
    return {shop, in_range(parse_money(charge))};
}

ShopRequest shop_request(const Arguments& arguments, const Surroundings& around) {
    ShopRequest request;
    request.today = parse_date(around.today);
    request.at = arguments.values("--at");
    for (const std::string& text : arguments.values("--delivery"))
        request.deliveries.push_back(flag_value("--delivery", [&] { return read_delivery(text); }));
    if (arguments.has("--one-shop")) request.trips = ShopRequest::Trips::one_shop;
    read_flag(arguments, "--most-left",
              [&](const std::string& text) { request.most_left_over = nothing_or_in_range(parse<Mass>(text)); });
    return request;
}

std::vector<TimedWord> timed_words(const Arguments& arguments) {
    std::vector<TimedWord> words;
    std::size_t sessions = 0;
    for (const std::string& word : arguments.words()) {
        words.push_back(timed_word(word));
        sessions += static_cast<std::size_t>(words.back().times);
    }
    if (sessions > most_sessions)
        throw UsageError("too-many-sessions",
                         std::to_string(sessions) + " sessions are more than can be shopped for at once",
                         "name at most " + std::to_string(most_sessions));
    return words;
}

/// The sessions one after the other, as they are named.
std::vector<SessionNeed> sessions_of(const std::vector<TimedWord>& words, const Shelf& shelf,
                                     const StrategyRequest& what_if, Calendar days) {
    std::vector<SessionNeed> sessions;
    for (const TimedWord& word : words) {
        const NamedStrategy named = strategy_argument(word.strategy, shelf);
        const UnrolledStrategy unrolled =
            with_places(named, [&] { return unroll_strategy(named.shelf(), named.strategy, what_if); });
        for (int time = 0; time < word.times; ++time) {
            sessions.push_back({unrolled.name, days.first, unrolled.totals});
            days.first += std::chrono::days{days.gap};
        }
    }
    return sessions;
}

CommandResult shop(const Arguments& arguments, const Surroundings& around) {
    const Calendar days = calendar(arguments, around);
    const ShopRequest request = shop_request(arguments, around);
    StrategyRequest what_if;
    read_flag(arguments, "--people",
              [&](const std::string& text) { what_if.people = read_count(text, "for example --people 4"); });
    const std::vector<TimedWord> words = timed_words(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<SessionNeed> sessions = sessions_of(words, *shelf, what_if, days);
    std::vector<IngredientNeed> needs;
    for (const SessionNeed& session : sessions) add_unlisted(needs, session.needs);
    const StockOnHand stock = stock_on_hand(arguments, *shelf, around, needs);
    const ShopAnswer answer = shop_sessions(std::move(sessions), stock, request);
    return {arguments.has("--json")  ? json_text(shop_json(answer))
            : arguments.has("--csv") ? csv_of_rows(shop_rows(answer))
                                     : shop_text(answer),
            answer.complete() ? 0 : 1};
}

}  // namespace

CommandSpec command_shop() {
    return {"shop",
            "what to buy for one or many sessions: the cheapest whole packs, on top of what the shed holds",
            {{"STRATEGY", "names or TOML files, in the order of the sessions; NAME=3 for three of them", true}},
            {{"--on", "DATE", "the day of the first session: 2026-11-28 (default today)"},
             {"--every", "TIME", "from one session to the next, in whole days (default 7d)"},
             {"--people", "NUMBER", "how many anglers, each feeding all of it"},
             {"--at", "SHOP", "buy only at this shop; may be repeated", true},
             {"--one-shop", "", "buy all of it at one shop"},
             {"--delivery", "SHOP=CHARGE", "what a shop charges to deliver, once: \"the mill=£4.50\"; may be repeated",
              true},
             {"--most-left", "MASS", "leave no more than this over of anything you buy"},
             {"--have", "NAME=AMOUNT", "what is in the shed, in place of what stock says; may be repeated", true},
             {"--empty-shed", "", "as if nothing were in the shed"},
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            shop,
            R"(baitwright shop "open carpet=6" "tight balls=2" --every 7d)"};
}

}  // namespace baitwright
