#pragma once

#include <optional>

#include "answers/money/cost_request.h"
#include "answers/shared/log_answer.h"
#include "store/store.h"

/// What a logged session asks of prices and of the shed.
namespace baitwright {

/// The strategy's question for so long and so many anglers.
StrategyRequest asked_of(const LoggedSession& session);

/// What a session of that strategy, length and number of anglers costs by the prices in use; nothing where it is no
/// strategy of the library, or where something has no price: part of a cost would mislead.
std::optional<Money> reckoned_cost(const Shelf& shelf, const LoggedSession& session, CostRequest money);

/// How it can be taken out of the shed; nothing where it was booked that day, or where the shed is empty.
std::optional<SessionToBook> to_book(Store& store, const LoggedSession& session, Date on);

}  // namespace baitwright
