#include <algorithm>

#include "quantities/fault.h"
#include "quantities/suggestion.h"
#include "store/shed.h"
#include "store/shed_entry.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_overdrawn =
    "SELECT id, over_mg FROM stock_lot WHERE item_id = ?1 AND over_mg > 0 AND state = ifnull(?2, state) ORDER BY id";
constexpr const char* newest_lot = "SELECT max(id) FROM stock_lot WHERE item_id = ?1";

std::string in_that_state(const Reach& reach) {
    return reach.state ? " " + std::string(word_of(stock_state_names, *reach.state)) : "";
}

/// Whole grams, unless they would hide the difference.
std::string grams_beside(Milligrams mass, Milligrams other) {
    const bool far_apart = mass - other >= Milligrams{1000} || other - mass >= Milligrams{1000};
    return exact_grams(far_apart ? Milligrams{(mass.count + 500) / 1000 * 1000} : mass);
}

Fault short_of(const std::string& name, Milligrams needed, Milligrams held, const Reach& reach) {
    const std::string there = held == Milligrams{} ? "none" : "only " + grams_beside(held, needed);
    return {"short-of-stock",
            "the shed holds " + there + " of the " + grams_beside(needed, held) + " of" + in_that_state(reach) + " " +
                name + " that this takes",
            "if there is more, count it: baitwright stock count \"" + name + "\" AMOUNT"};
}

/// Takes one need out, or adds a fault.
void plan_taking(StoreConnection& connection, const StockNeed& need, const Reach& reach, std::vector<Change>& changes,
                 std::vector<Fault>& faults) {
    const auto item = read_item(connection, need.name);
    std::vector<Lot> lots;
    if (item) {
        refuse_before_count(connection, *item, reach.on);
        lots = read_lots(connection, item->id);
        if (need.lot != 0) std::erase_if(lots, [&](const Lot& lot) { return lot.id != need.lot; });
    }
    const Milligrams held = left_in(lots, reach);
    if (held < need.mass)
        faults.push_back(short_of(item ? item->name : need.name, need.mass, held, reach));
    else if (item)
        changes.push_back({*item, taken(std::move(lots), need.mass, reach)});
}

/// What is named twice is needed twice.
std::vector<StockNeed> summed(const std::vector<StockNeed>& needs) {
    std::vector<StockNeed> sums;
    for (const StockNeed& need : needs) {
        const auto same = std::find_if(sums.begin(), sums.end(), [&](const StockNeed& one) {
            return one.lot == need.lot && folded_name(one.name) == folded_name(need.name);
        });
        if (same == sums.end())
            sums.push_back(need);
        else
            same->mass += need.mass;
    }
    sums.erase(std::remove_if(sums.begin(), sums.end(), [](const StockNeed& one) { return one.mass <= Milligrams{}; }),
               sums.end());
    return sums;
}

void refuse_count_before(const ItemRow& item, Date on) {
    if (item.last_on > on)
        throw UsageError("before-entry",
                         "something of " + item.name + " was entered for " + date_text(item.last_on) +
                             ", after the day of this count",
                         "count what is there now");
}

/// What two stores used of one bag beyond what was in it is made good by a count.
void make_good(StoreConnection& connection, const ItemRow& item, const Reach& reach, std::vector<Movement>& movements) {
    std::optional<std::string_view> state;
    if (reach.state) state = word_of(stock_state_names, *reach.state);
    Query rows(connection, select_overdrawn, item.id, state);
    while (rows.next()) movements.push_back({rows.whole(0), {rows.whole(1)}});
}

/// The movements of a count, with a new lot for what none of the old ones can have been.
std::vector<Movement> count_movements(StoreConnection& connection, const ItemRow& item, const StockCount& count,
                                      const Reach& reach) {
    const std::vector<Lot> lots = read_lots(connection, item.id);
    Correction correction =
        corrected(lots, count.counted, reach, count.best_before ? Surplus::own_bag : Surplus::in_first_lot);
    if (correction.new_lot > Milligrams{}) {
        Lot lot;
        lot.state = reach.state.value_or(item.kind == StockKind::mix ? StockState::cold : StockState::dry);
        lot.got_on = reach.on;
        lot.best_before = count.best_before;
        correction.movements.push_back({write_lot(connection, item.id, lot), correction.new_lot});
    } else if (count.best_before) {
        throw UsageError("no-surplus", "no more was counted than the shed holds, so there is no new bag to date",
                         "leave --best-before out");
    }
    make_good(connection, item, reach, correction.movements);
    if (correction.movements.empty()) {  // that it was counted is worth an entry all the same
        const std::int64_t lot = lots.empty() ? number_of(Query(connection, newest_lot, item.id)) : lots.front().id;
        correction.movements.push_back({lot, {}});
    }
    return std::move(correction.movements);
}

}  // namespace

StockReceipt Shed::add(Happening what, const Arrival& arrival) {
    connection_->require_change();
    return connection_->guarded([&] {
        const Date on = arrival.lot.got_on;
        ItemRow item = item_for(*connection_, arrival.name, arrival.kind, on);
        refuse_before_count(*connection_, item, on);
        const Movement in{write_lot(*connection_, item.id, arrival.lot), arrival.lot.left};
        return write_entry(*connection_, {0, what, on, {}, 0, {}}, {{std::move(item), {in}}});
    });
}

StockReceipt Shed::take(Happening what, const StockNeed& need, const Reach& reach) {
    connection_->require_change();
    return connection_->guarded([&] {
        std::vector<Change> changes;
        std::vector<Fault> faults;
        plan_taking(*connection_, need, reach, changes, faults);
        if (!faults.empty()) throw Error(FaultClass::answer_is_no, std::move(faults));
        return write_entry(*connection_, {0, what, reach.on, {}, 0, {}}, changes);
    });
}

StockReceipt Shed::count(const StockCount& count, const Reach& reach) {
    connection_->require_change();
    return connection_->guarded([&]() -> StockReceipt {
        StockReceipt receipt{0, Happening::counted, reach.on, {}, 0, {}};
        if (count.counted == Milligrams{} && !read_item(*connection_, count.name)) return receipt;
        ItemRow item = item_for(*connection_, count.name, count.kind, reach.on);
        refuse_count_before(item, reach.on);
        std::vector<Movement> movements = count_movements(*connection_, item, count, reach);
        return write_entry(*connection_, receipt, {{std::move(item), std::move(movements)}});
    });
}

StockReceipt Shed::book(const std::vector<StockNeed>& needs, const std::string& session, Date on) {
    connection_->require_change();
    return connection_->guarded([&] {
        std::vector<Change> changes;
        std::vector<Fault> faults;
        for (const StockNeed& need : summed(needs)) plan_taking(*connection_, need, {on, {}}, changes, faults);
        if (!faults.empty()) throw Error(FaultClass::answer_is_no, std::move(faults));
        return write_entry(*connection_, {0, Happening::booked, on, session, 0, {}}, changes);
    });
}

}  // namespace baitwright
