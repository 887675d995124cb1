#include "cli/commands.h"

#include "answers/strategy/kept_in_feeds.h"
#include "answers/strategy/unroll_strategy.h"
#include "cli/read_stock.h"
#include "cli/result_formats.h"
#include "library/named.h"
#include "library/session_stock.h"
#include "questions/read_flags.h"
#include "report/replies.h"

namespace baitwright {

namespace {

CommandResult run_stock_session(const Arguments& arguments, const Surroundings& around) {
    StrategyRequest request;
    read_flag(arguments, "--length", [&](const std::string& text) { request.length = in_range(read_hours(text)); });
    read_flag(arguments, "--people",
              [&](const std::string& text) { request.people = read_count(text, "for example --people 2"); });
    const Date on = day_of(arguments, around);
    Store store = store_of(around);
    const Named<Strategy> named = named_strategy(arguments.words().front(), store);
    const StockOnHand shed({}, [&store](std::string_view mix) { return kept_in_shed(store.shed(), mix); });
    request = with_kept(request, named.value, shed, on);
    const UnrolledStrategy session =
        with_places(named, [&] { return unroll_strategy(named.shelf(), named.value, request); });
    const StockChangeAnswer answer = book_session(store, session, on);
    return given(arguments, stock_change_reply("stock session", answer));
}

}  // namespace

CommandSpec command_stock_session() {
    return {"stock session",
            "take all that a session needs out of the shed at once, hookbaits too; stock undo puts it back",
            {{"STRATEGY", "its name, a TOML file, or - for standard input"}},
            {{"--length", "TIME", "how long the session lasts: 3h"},
             {"--people", "NUMBER", "how many anglers, each feeding all of it", false, "people"},
             {"--on", "DATE", "the day of the session: 2026-11-28 (default: today)"},
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            run_stock_session,
            R"(baitwright stock session "open carpet"
baitwright stock session "open carpet" --length 3h --people 2)",
            Effect::stores};
}

}  // namespace baitwright
