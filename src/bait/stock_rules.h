#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/keeping.h"
#include "bait/stock.h"

/// The rules of the ledger, on plain values. First to expire is used first; nothing falls below zero; a count corrects
/// by a movement of the difference; nothing is ever erased, for what takes an entry back is an entry of its own.
/// **Source**: common practice, no source. **Test**: `tests/bait/stock_rules_test.cpp`, and the store's ledger against
/// a model that knows nothing of these functions: `tests/store/shed_model_test.cpp`.
namespace baitwright {

/// By best before (not known comes last), then by the day it came, then by number.
bool goes_first(const Lot& a, const Lot& b);

/// The lots that an entry may touch: those that were there on its day and, where asked for, are kept in that way.
struct Reach {
    Date on;
    std::optional<StockState> state;
};
bool in_reach(const Lot& lot, const Reach& reach);
Milligrams left_in(const std::vector<Lot>& lots, const Reach& reach);

/// Takes that mass out of the lots in reach, the first to expire first. They must hold it.
std::vector<Movement> taken(std::vector<Lot> lots, Milligrams mass, const Reach& reach);

/// What makes the lots in reach hold what was counted. Less: the difference is taken as if it had been used. More: it
/// is added to the lot that goes first, for that is the careful date; where none holds anything, or the surplus is
/// known to be another bag (`own_bag`), to a new lot.
struct Correction {
    std::vector<Movement> movements;
    Milligrams new_lot;
};
enum class Surplus { in_first_lot, own_bag };
Correction corrected(const std::vector<Lot>& lots, Milligrams counted, const Reach& reach, Surplus surplus);

/// The last day on which it is at its best, reckoned from the day it came; not known where `keeps` does not say.
std::optional<Date> best_before(Date got_on, StockState state, const Keeping& keeps);

/// How long a damp mix keeps: a day or two cold, three months frozen. **Source**: common practice, no source.
Keeping keeping_of_mix();
/// It may be frozen once more after it was thawed, then no more. **Source**: common practice, no source.
inline constexpr int most_refrozen = 1;

/// Past its best on that day.
bool is_past(const Lot& lot, Date today);

/// Where something is put by nobody's word: as it is known to keep; dry where nothing is known.
StockState usual_state(const Keeping& keeps);

}  // namespace baitwright
