#pragma once

#include "answers/shared/stock_answer.h"
#include "answers/strategy/unroll_strategy.h"
#include "bait/stock_on_hand.h"
#include "store/store.h"

/// Where a session meets the shed.
namespace baitwright {

/// What the shed holds of an ingredient, lot by lot, at what was paid for what is left of it.
std::vector<StockLot> lots_in_shed(const Shed& shed, std::string_view ingredient);

/// The tubs of a mix that was put by. One whose date nobody told is good for as long as damp mix keeps.
std::vector<KeptMix> kept_in_shed(const Shed& shed, std::string_view mix);

/// Takes all that a strategy needs out of the shed, hookbaits, additives and the tubs of kept mix that it uses too, in
/// one booking. Throws Error
/// (answer_is_no) with everything that the shed is short of; then nothing is taken.
StockChangeAnswer book_session(Store& store, const UnrolledStrategy& session, Date on);

}  // namespace baitwright
