#include "library/session_stock.h"

namespace baitwright {

namespace {

/// What came in as that lot.
Milligrams arrived(const std::vector<StockEntry>& history, std::int64_t lot) {
    for (const StockEntry& entry : history)
        for (const Movement& movement : entry.changes)
            if (movement.lot == lot && movement.by.count > 0) return movement.by;
    return {};
}

std::optional<Money> paid_for_rest(const Lot& lot, const std::vector<StockEntry>& history) {
    const Milligrams all = arrived(history, lot.id);
    if (!lot.paid || all.count <= 0) return std::nullopt;
    const double share = static_cast<double>(lot.left.count) / static_cast<double>(all.count);
    return Money(round_half_even(share * static_cast<double>(lot.paid->minor())), lot.paid->currency());
}

}  // namespace

std::vector<StockLot> lots_in_shed(const Shed& shed, std::string_view ingredient) {
    const std::optional<StockItem> item = shed.find(ingredient);
    if (!item || item->kind != StockKind::ingredient || item->lots.empty()) return {};
    const std::vector<StockEntry> history = shed.history(item->name);
    std::vector<StockLot> lots;
    for (const Lot& lot : item->lots) lots.push_back({mass_of(lot.left), lot.best_before, paid_for_rest(lot, history)});
    return lots;
}

StockChangeAnswer book_session(Store& store, const UnrolledStrategy& session, Date on) {
    std::vector<StockNeed> needs;
    for (const IngredientNeed& need : session.totals) needs.push_back({need.ingredient.name, in_milligrams(need.mass)});
    StockReceipt receipt;
    store.change([&] { receipt = store.shed().book(needs, session.name, on); });
    return stock_change_answer(std::move(receipt));
}

}  // namespace baitwright
