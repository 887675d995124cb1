#include "library/log_cost.h"

#include "answers/money/cost_strategy.h"
#include "answers/strategy/unroll_strategy.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"

namespace baitwright {

StrategyRequest asked_of(const LoggedSession& session) {
    StrategyRequest request;
    if (session.length > Time{}) request.length = session.length;
    request.people = session.anglers;
    return request;
}

std::optional<Money> reckoned_cost(const Shelf& shelf, const LoggedSession& session, CostRequest money) {
    if (session.strategy.empty()) return std::nullopt;
    const auto strategy = shelf.find_strategy(session.strategy);
    if (!strategy) return std::nullopt;
    money.what_if = asked_of(session);
    money.ranges = CostRequest::Ranges::left_out;
    try {
        const StrategyCost cost = cost_strategy(shelf, *strategy, StockOnHand{}, money);
        if (!cost.currency || !cost.complete()) return std::nullopt;
        return Money(cost.used_minor, *cost.currency);
    } catch (const Error&) {  // a session longer than any strategy, or one that cannot be unrolled any more
        return std::nullopt;
    }
}

namespace {

int usual_people(const Store& store) {
    const Usual usual = store.usual();
    const auto told = usual.find("people");
    return told == usual.end() || told->second.empty() ? 1 : std::stoi(told->second.front());
}

}  // namespace

std::optional<SessionToBook> to_book(Store& store, const LoggedSession& session, Date on) {
    const auto strategy = session.strategy.empty() ? std::optional<Strategy>{} : store.find_strategy(session.strategy);
    Shed shed = store.shed();
    if (!strategy || shed.item_count() == 0) return std::nullopt;
    try {
        const UnrolledStrategy unrolled = unroll_strategy(store, *strategy, asked_of(session));
        for (const IngredientNeed& need : unrolled.totals)
            for (const StockEntry& entry : shed.history(need.ingredient.name))
                if (entry.what == Happening::booked && entry.undone_by == 0 && entry.on == on &&
                    folded_name(entry.session) == folded_name(strategy->name))
                    return std::nullopt;
    } catch (const Error&) {
        return std::nullopt;
    }
    SessionToBook book{strategy->name, on, std::nullopt, std::nullopt};
    if (session.anglers != usual_people(store)) book.people = session.anglers;
    if (session.length > Time{} && session.length != strategy->length) book.length = session.length;
    return book;
}

}  // namespace baitwright
