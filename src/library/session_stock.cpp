#include "library/session_stock.h"

#include <algorithm>

#include "bait/stock_rules.h"

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

ComingHome coming_home_of(const FeedNeed& need, Ratio spare) {
    ComingHome home{need.name, need.fed.feel == need.fed.mix.feel.name ? std::string() : need.fed.feel,
                    double(spare) / (1 + double(spare)) * need.wet_mass, StockState::frozen};
    for (const KeptUse& use : need.kept)
        if (use.of.state == StockState::frozen) home.keeps_best = StockState::cold;
    return home;
}

/// The damp mixes that the shed can take: a mix with something else in its feed is none.
std::vector<ComingHome> coming_home_of(const Store& store, const UnrolledStrategy& session) {
    std::vector<ComingHome> all;
    for (const FeedNeed& need : session.feeds) {
        if (need.fed.feel.empty() || store.find_ingredient(need.name) || !store.find_recipe(need.name)) continue;
        ComingHome home = coming_home_of(need, session.spare);
        const auto same = std::find_if(all.begin(), all.end(), [&](const ComingHome& other) {
            return other.mix == home.mix && other.feel == home.feel;
        });
        if (same == all.end()) {
            all.push_back(std::move(home));
            continue;
        }
        same->spare += home.spare;
        if (home.keeps_best == StockState::cold) same->keeps_best = StockState::cold;
    }
    return all;
}

/// What goes in at several feels is taken out of its tub at once, so that no rounding stays behind.
std::vector<KeptMix> used_of_each_lot(const std::vector<KeptUse>& uses) {
    std::vector<KeptMix> tubs;
    for (const KeptUse& use : uses) {
        const auto same = std::find_if(
            tubs.begin(), tubs.end(), [&](const KeptMix& tub) { return tub.lot == use.of.lot && tub.of == use.of.of; });
        if (same == tubs.end())
            tubs.push_back(use.of);
        else
            same->mass += use.of.mass;
    }
    return tubs;
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

std::vector<KeptMix> kept_in_shed(const Shed& shed, std::string_view mix) {
    const std::optional<StockItem> item = shed.find(mix);
    if (!item || item->kind != StockKind::mix) return {};
    std::vector<KeptMix> tubs;
    tubs.reserve(item->lots.size());
    for (const Lot& lot : item->lots) {
        const auto best = lot.best_before ? lot.best_before : best_before(lot.got_on, lot.state, keeping_of_mix());
        tubs.push_back({item->name, mass_of(lot.left), lot.state, lot.feel, best, lot.got_on, lot.id});
    }
    return tubs;
}

StockChangeAnswer book_session(Store& store, const UnrolledStrategy& session, Date on) {
    std::vector<StockNeed> needs;
    for (const IngredientNeed& need : session.totals) needs.push_back({need.ingredient.name, in_milligrams(need.mass)});
    for (const KeptMix& tub : used_of_each_lot(session.kept))
        needs.push_back({tub.of, in_milligrams(tub.mass), tub.lot});
    StockReceipt receipt;
    store.change([&] { receipt = store.shed().book(needs, session.name, on); });
    StockChangeAnswer answer = stock_change_answer(std::move(receipt));
    answer.coming_home = coming_home_of(store, session);
    return answer;
}

}  // namespace baitwright
