#include "page/phone_shed.h"

#include <algorithm>

#include "bait/stock_rules.h"
#include "quantities/fault.h"
#include "quantities/sort_stably.h"
#include "quantities/suggestion.h"
#include "report/display.h"

namespace baitwright {

namespace {

void sum_up(StockItem& item) {
    std::erase_if(item.lots, [](const Lot& lot) { return lot.left <= Milligrams{}; });
    std::sort(item.lots.begin(), item.lots.end(), goes_first);
    item.left = {};
    for (const Lot& lot : item.lots) item.left += lot.left;
}

std::optional<Money> paid_for_what_is_left(const Lot& lot, Milligrams came) {
    if (!lot.paid || came <= Milligrams{}) return std::nullopt;
    const double share = static_cast<double>(lot.left.count) / static_cast<double>(came.count);
    return Money(round_half_even(share * static_cast<double>(lot.paid->minor())), lot.paid->currency());
}

KeptMix kept_of(const std::string& mix, const Lot& lot) {
    const auto best = lot.best_before ? lot.best_before : best_before(lot.got_on, lot.state, keeping_of_mix());
    return {mix, mass_of(lot.left), lot.state, lot.feel, best, lot.got_on, lot.id};
}

Lot lot_of_kept(const KeptMix& tub, Date made_on) {
    Lot lot;
    lot.state = tub.state;
    lot.got_on = tub.kept_on.value_or(made_on);
    lot.best_before = tub.best_before;
    lot.left = in_milligrams(tub.mass);
    lot.feel = tub.feel;
    return lot;
}

Lot lot_of_stock(const StockLot& held, Date made_on, const Keeping& keeps) {
    Lot lot;
    lot.state = usual_state(keeps);
    lot.got_on = made_on;
    lot.best_before = held.best_before;
    lot.left = in_milligrams(held.mass);
    lot.paid = held.paid;
    return lot;
}

[[noreturn]] void refuse_short(const ShedEntry& entry, Milligrams held) {
    const std::string there = held <= Milligrams{} ? "none" : "only " + shown_mass(mass_of(held));
    throw Error(FaultClass::answer_is_no,
                Fault{"short-of-stock",
                      "the shed holds " + there + " of the " + shown_mass(mass_of(entry.mass)) + " of " +
                          entry.of.name + " that this takes",
                      "if there is more, count it"});
}

}  // namespace

PhoneShed::PhoneShed(const Shelf& shelf, const StockOnHand& have, Date made_on) {
    for (const std::string& name : shelf.ingredient_names())
        for (const StockLot& held : have.lots(name, std::nullopt))
            add(name, StockKind::ingredient, lot_of_stock(held, made_on, shelf.ingredient(name).keeps));
    for (const std::string& name : shelf.recipe_names())
        for (const KeptMix& tub : have.kept(name)) add(name, StockKind::mix, lot_of_kept(tub, made_on));
}

StockItem& PhoneShed::item_of(const std::string& name, StockKind kind) {
    return items_.try_emplace(folded_name(name), StockItem{name, kind, {}, {}}).first->second;
}

void PhoneShed::add(const std::string& name, StockKind kind, Lot lot) {
    lot.id = ++last_lot_;
    came_[lot.id] = lot.left;
    StockItem& item = item_of(name, kind);
    item.lots.push_back(std::move(lot));
    sum_up(item);
}

void PhoneShed::move(StockItem& item, const std::vector<Movement>& movements, Date on, bool opens) {
    for (Lot& lot : item.lots)
        for (const Movement& movement : movements)
            if (movement.lot == lot.id) {
                lot.left += movement.by;
                if (opens && !lot.opened_on) lot.opened_on = on;
            }
    sum_up(item);
}

void PhoneShed::take(const ShedEntry& entry) {
    const Reach reach{entry.on, std::nullopt};
    StockItem& item = item_of(entry.of.name, entry.of.kind);
    const Milligrams held = left_in(item.lots, reach);
    if (held < entry.mass) refuse_short(entry, held);
    move(item, taken(item.lots, entry.mass, reach), entry.on, entry.what == "use");
}

void PhoneShed::count(const ShedEntry& entry) {
    const Reach reach{entry.on, std::nullopt};
    StockItem& item = item_of(entry.of.name, entry.of.kind);
    const Correction correction = corrected(item.lots, entry.mass, reach, Surplus::in_first_lot);
    move(item, correction.movements, entry.on, false);
    if (correction.new_lot <= Milligrams{}) return;
    Lot lot;
    lot.state = entry.of.kind == StockKind::mix ? StockState::cold : StockState::dry;
    lot.got_on = entry.on;
    lot.left = correction.new_lot;
    add(entry.of.name, entry.of.kind, std::move(lot));
}

void PhoneShed::enter(const ShedEntry& entry) {
    if (entry.what == "count") return count(entry);
    if (entry.what != "buy") return take(entry);
    const Keeping keeps = entry.of.ingredient ? entry.of.ingredient->keeps : Keeping{};
    Lot lot;
    lot.state = usual_state(keeps);
    lot.got_on = entry.on;
    lot.best_before = best_before(entry.on, lot.state, keeps);
    lot.left = entry.mass;
    lot.paid = entry.paid;
    lot.shop = entry.shop;
    add(entry.of.name, StockKind::ingredient, std::move(lot));
}

ShedAnswer PhoneShed::answer(Date today) const {
    std::vector<StockItem> items;
    for (const auto& [key, item] : items_)
        if (!item.lots.empty()) items.push_back(item);
    sort_stably(items.begin(), items.end(),
                [](const StockItem& a, const StockItem& b) { return goes_first(a.lots.front(), b.lots.front()); });
    return shed_answer(std::move(items), 0, today);
}

StockOnHand PhoneShed::stock() const {
    StockOnHand stock;
    for (const auto& [key, item] : items_)
        for (const Lot& lot : item.lots) {
            if (item.kind == StockKind::mix)
                stock.put(kept_of(item.name, lot));
            else
                stock.put(item.name,
                          {mass_of(lot.left), lot.best_before, paid_for_what_is_left(lot, came_.at(lot.id))});
        }
    return stock;
}

std::vector<std::string> PhoneShed::names() const {
    std::vector<std::string> names;
    for (const auto& [key, item] : items_) names.push_back(item.name);
    return names;
}

}  // namespace baitwright
