// The store's ledger against a plain model in memory that shares no code with it: the model keeps every entry and adds
// all of them up again whenever it is asked. Random entries go into both; both must take or refuse the same, for the
// same reason, and hold the same afterwards.
#include <SQLiteCpp/Database.h>
#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <map>

#include "quantities/fault.h"
#include "store/shed.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

/// Dates and states are text here, and what has no date is "~", after every date.
struct ModelLot {
    std::string name, state, got, best;
};

struct ModelEntry {
    std::string what, on;
    std::map<std::size_t, std::int64_t> by;  // lot to milligrams
    std::string counted;                     // the name that was counted
    std::size_t undoes = 0;
};

class Model {
public:
    std::vector<ModelLot> lots;
    std::vector<ModelEntry> entries;

    [[nodiscard]] std::int64_t left(std::size_t lot) const {
        std::int64_t sum = 0;
        for (const ModelEntry& entry : entries)
            if (entry.by.count(lot) > 0) sum += entry.by.at(lot);
        return sum;
    }

    [[nodiscard]] bool is_undone(std::size_t number) const {
        return std::any_of(entries.begin(), entries.end(), [&](const ModelEntry& e) { return e.undoes == number; });
    }

    /// The first day on which something was used of the lot; empty for none.
    [[nodiscard]] std::string opened(std::size_t lot) const {
        std::string first;
        for (std::size_t i = 0; i < entries.size(); ++i) {
            const bool takes = entries[i].what == "used" || entries[i].what == "booked";
            if (!takes || is_undone(i + 1) || entries[i].by.count(lot) == 0) continue;
            if (first.empty() || entries[i].on < first) first = entries[i].on;
        }
        return first;
    }

    [[nodiscard]] bool holds_name(const ModelEntry& entry, const std::string& name) const {
        return std::any_of(entry.by.begin(), entry.by.end(),
                           [&](const auto& one) { return lots[one.first - 1].name == name; });
    }

    /// The number of the last count of that name that stands; 0 for none.
    [[nodiscard]] std::size_t last_count(const std::string& name) const {
        for (std::size_t number = entries.size(); number > 0; --number)
            if (entries[number - 1].counted == name && !is_undone(number)) return number;
        return 0;
    }

    [[nodiscard]] bool counted_after(const std::string& name, const std::string& on) const {
        const std::size_t count = last_count(name);
        return count > 0 && entries[count - 1].on > on;
    }

    /// Numbers of that name's lots that hold something, in the order of use, by picking the least again and again.
    [[nodiscard]] std::vector<std::size_t> in_turn(const std::string& name) const {
        std::vector<std::size_t> order;
        for (;;) {
            std::size_t best = 0;
            for (std::size_t lot = 1; lot <= lots.size(); ++lot) {
                if (lots[lot - 1].name != name || left(lot) == 0) continue;
                if (std::find(order.begin(), order.end(), lot) != order.end()) continue;
                if (best == 0 || lots[lot - 1].best + lots[lot - 1].got < lots[best - 1].best + lots[best - 1].got)
                    best = lot;
            }
            if (best == 0) return order;
            order.push_back(best);
        }
    }

    /// Takes out milligram by lot; what could not be taken is returned.
    std::int64_t take(const std::string& name, std::int64_t mass, const std::string& on, const std::string& state,
                      ModelEntry& entry) const {
        for (const std::size_t lot : in_turn(name)) {
            if (lots[lot - 1].got > on || (!state.empty() && lots[lot - 1].state != state)) continue;
            const std::int64_t part = std::min(mass, left(lot));
            if (part > 0) entry.by[lot] = -part;
            mass -= part;
        }
        return mass;
    }

    std::string add(const ModelLot& lot, std::int64_t mass) {
        if (counted_after(lot.name, lot.got)) return "before-count";
        lots.push_back(lot);
        entries.push_back({"bought", lot.got, {{lots.size(), mass}}, "", 0});
        return "";
    }

    std::string book(const std::string& what, const std::map<std::string, std::int64_t>& needs, const std::string& on,
                     const std::string& state) {
        ModelEntry entry{what, on, {}, "", 0};
        std::int64_t missing = 0;
        for (const auto& [name, mass] : needs) {
            if (counted_after(name, on)) return "before-count";
            missing += take(name, mass, on, state, entry);
        }
        if (missing > 0) return "short-of-stock";
        entries.push_back(entry);
        return "";
    }

    std::string count(const std::string& name, std::int64_t mass, const std::string& on, const std::string& state,
                      const std::string& best) {
        const bool known = std::any_of(lots.begin(), lots.end(), [&](const ModelLot& l) { return l.name == name; });
        if (!known && mass == 0) return "";
        for (const ModelEntry& entry : entries)
            if (entry.undoes == 0 && holds_name(entry, name) && entry.on > on) return "before-entry";
        std::int64_t there = 0;
        std::vector<std::size_t> fitting;
        for (const std::size_t lot : in_turn(name))
            if (state.empty() || lots[lot - 1].state == state) {
                there += left(lot);
                fitting.push_back(lot);
            }
        ModelEntry entry{"counted", on, {}, name, 0};
        if (mass <= there && !best.empty()) return "no-surplus";
        if (mass < there) {
            take(name, there - mass, on, state, entry);
        } else if (mass > there && !fitting.empty() && best.empty()) {
            entry.by[fitting.front()] = mass - there;
        } else if (mass > there) {
            lots.push_back({name, state.empty() ? "dry" : state, on, best.empty() ? "~" : best});
            entry.by[lots.size()] = mass - there;
        } else {
            entry.by[a_lot_of(name)] = 0;
        }
        entries.push_back(entry);
        return "";
    }

    std::string undo(std::size_t number, const std::string& on) {
        if (number == 0) {
            for (number = entries.size(); number > 0; --number)
                if (entries[number - 1].undoes == 0 && !is_undone(number)) break;
            if (number == 0) return "nothing-to-undo";
        }
        if (number > entries.size()) return "unknown-entry";
        if (entries[number - 1].undoes > 0 || is_undone(number)) return "cannot-undo";
        ModelEntry entry{"undone", on, {}, "", number};
        for (const auto& [lot, by] : entries[number - 1].by) {
            if (last_count(lots[lot - 1].name) > number || left(lot) < by) return "cannot-undo";
            entry.by[lot] = -by;
        }
        entries.push_back(entry);
        return "";
    }

private:
    [[nodiscard]] std::size_t a_lot_of(const std::string& name) const {
        const auto held = in_turn(name);
        if (!held.empty()) return held.front();
        std::size_t newest = 0;
        for (std::size_t lot = 1; lot <= lots.size(); ++lot)
            if (lots[lot - 1].name == name) newest = lot;
        return newest;
    }
};

const std::vector<std::string> names{"brown crumb", "maize meal", "molasses"};

std::string any_of(const std::vector<std::string>& texts) {
    return *rc::gen::elementOf(texts);
}
std::string any_day() {
    return "2026-03-0" + std::to_string(*rc::gen::inRange(1, 10));
}
std::string any_best() {
    return any_of({"", "", "2026-04-01", "2026-04-02", "2026-05-01"});
}
std::string any_state() {
    return any_of({"", "", "", "dry", "frozen"});
}
std::int64_t any_mass() {
    return *rc::gen::inRange<std::int64_t>(1, 2000);
}

std::optional<Date> date_or_none(const std::string& text) {
    if (text.empty() || text == "~") return std::nullopt;
    return parse_date(text);
}

std::optional<StockState> state_or_none(const std::string& text) {
    if (text.empty()) return std::nullopt;
    return text == "dry" ? StockState::dry : StockState::frozen;
}

/// Why the store refuses it; empty where it does not.
template <class Work>
std::string code_of(Store& store, Work&& work) {
    try {
        store.change([&] {
            Shed shed = store.shed();
            work(shed);
        });
    } catch (const Error& error) {
        return error.faults().front().code;
    }
    return "";
}

void buy(Store& store, Model& model) {
    const std::string best = any_best(), state = any_of({"dry", "frozen"});
    const ModelLot lot{any_of(names), state, any_day(), best.empty() ? "~" : best};
    const std::int64_t mass = any_mass();
    Arrival arrival{lot.name, StockKind::ingredient, {}};
    arrival.lot.state = *state_or_none(state);
    arrival.lot.got_on = parse_date(lot.got);
    arrival.lot.best_before = date_or_none(best);
    arrival.lot.left = {mass};
    const auto came = code_of(store, [&](Shed& shed) { shed.add(Happening::bought, arrival); });
    RC_ASSERT(came == model.add(lot, mass));
}

void take(Store& store, Model& model) {
    const std::string what = any_of({"used", "wasted"}), name = any_of(names), day = any_day(), state = any_state();
    const std::int64_t mass = any_mass();
    const auto came = code_of(store, [&](Shed& shed) {
        shed.take(what == "used" ? Happening::used : Happening::wasted, {name, {mass}},
                  {parse_date(day), state_or_none(state)});
    });
    RC_ASSERT(came == model.book(what, {{name, mass}}, day, state));
}

void book(Store& store, Model& model) {
    std::vector<StockNeed> needs;
    std::map<std::string, std::int64_t> sums;
    for (int i = *rc::gen::inRange(1, 4); i > 0; --i) {
        needs.push_back({any_of(names), {any_mass()}});
        sums[needs.back().name] += needs.back().mass.count;
    }
    const std::string day = any_day();
    const auto came = code_of(store, [&](Shed& shed) { shed.book(needs, "silt bed", parse_date(day)); });
    RC_ASSERT(came == model.book("booked", sums, day, ""));
}

void count(Store& store, Model& model) {
    const std::string name = any_of(names), day = any_day(), state = any_state(), best = any_best();
    const std::int64_t mass = *rc::gen::oneOf(rc::gen::just<std::int64_t>(0), rc::gen::inRange<std::int64_t>(0, 3000));
    const auto came = code_of(store, [&](Shed& shed) {
        shed.count({name, StockKind::ingredient, {mass}, date_or_none(best)}, {parse_date(day), state_or_none(state)});
    });
    RC_ASSERT(came == model.count(name, mass, day, state, best));
}

void undo(Store& store, Model& model) {
    const auto number = *rc::gen::inRange<std::size_t>(0, model.entries.size() + 2);
    const std::string day = any_day();
    std::optional<std::int64_t> entry;
    if (number > 0) entry = static_cast<std::int64_t>(number);
    const auto came = code_of(store, [&](Shed& shed) { shed.undo(entry, parse_date(day)); });
    RC_ASSERT(came == model.undo(number, day));
}

void check_same(const Shed& shed, const Model& model, const std::string& name) {
    const auto item = shed.find(name);
    std::size_t entries = 0;
    for (const ModelEntry& entry : model.entries) entries += model.holds_name(entry, name) ? 1 : 0;
    RC_ASSERT(shed.history(name).size() == entries);
    const std::vector<std::size_t> lots = model.in_turn(name);
    RC_ASSERT((item ? item->lots.size() : 0) == lots.size());
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < lots.size(); ++i) {
        const Lot& lot = item->lots[i];
        RC_ASSERT(lot.id == static_cast<std::int64_t>(lots[i]));
        RC_ASSERT(lot.left.count == model.left(lots[i]));
        RC_ASSERT(lot.left.count > 0);
        RC_ASSERT((lot.opened_on ? date_text(*lot.opened_on) : "") == model.opened(lots[i]));
        RC_ASSERT(stock_state_names[static_cast<std::size_t>(lot.state)] == model.lots[lots[i] - 1].state);
        sum += lot.left.count;
    }
    RC_ASSERT(shed.left_of(name).count == sum);
}

}  // namespace

TEST_CASE("the ledger in the store holds and refuses what a plain model holds and refuses") {
    CHECK(rc::check([] {
        const TemporaryFolder folder;
        Store store = Store::open(folder / "library.db");
        Model model;
        const auto steps = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 10));
        for (const int step : steps) {
            if (step < 3)
                buy(store, model);
            else if (step < 5)
                take(store, model);
            else if (step < 7)
                book(store, model);
            else if (step < 8)
                count(store, model);
            else
                undo(store, model);
            for (const std::string& name : names) check_same(store.shed(), model, name);
        }
        RC_CLASSIFY(model.entries.size() > 20, "long");
        SQLite::Database database((folder / "library.db").string());
        RC_ASSERT(database.execAndGet("PRAGMA integrity_check").getString() == "ok");
        RC_ASSERT(database.execAndGet("SELECT count(*) FROM stock_entry").getInt64() ==
                  static_cast<std::int64_t>(model.entries.size()));
    }));
}
