#include "library/store_of_everything.h"

#include "library/change_library.h"
#include "library/change_shed.h"
#include "library/own_entries.h"
#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

StoreOfEverything::StoreOfEverything(const std::filesystem::path& path, unsigned seed)
    : store(open_store(path)), dice_(seed), day_(parse_date("2026-01-01")) {
    for (const auto& change :
         {&StoreOfEverything::change_ingredient, &StoreOfEverything::add_mix, &StoreOfEverything::change_strategy,
          &StoreOfEverything::add_venue, &StoreOfEverything::rename_one, &StoreOfEverything::remove_one,
          &StoreOfEverything::tell_price, &StoreOfEverything::buy_some, &StoreOfEverything::buy_some,
          &StoreOfEverything::use_some, &StoreOfEverything::count_some, &StoreOfEverything::undo_some,
          &StoreOfEverything::log_session, &StoreOfEverything::log_bait, &StoreOfEverything::log_bait,
          &StoreOfEverything::undo_log, &StoreOfEverything::learn_something, &StoreOfEverything::tell_usual})
        (this->*change)();
}

void StoreOfEverything::go_on(int changes) {
    using Work = void (StoreOfEverything::*)();
    static constexpr Work all[] = {
        &StoreOfEverything::change_ingredient, &StoreOfEverything::add_mix,    &StoreOfEverything::change_strategy,
        &StoreOfEverything::add_venue,         &StoreOfEverything::rename_one, &StoreOfEverything::remove_one,
        &StoreOfEverything::tell_price,        &StoreOfEverything::buy_some,   &StoreOfEverything::use_some,
        &StoreOfEverything::count_some,        &StoreOfEverything::undo_some,  &StoreOfEverything::log_session,
        &StoreOfEverything::log_bait,          &StoreOfEverything::log_bait,   &StoreOfEverything::undo_log,
        &StoreOfEverything::learn_something,   &StoreOfEverything::tell_usual};
    for (; changes > 0; --changes) (this->*all[below(std::size(all))])();
}

double StoreOfEverything::between(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(dice_);
}

int StoreOfEverything::below(int end) {
    return std::uniform_int_distribution<int>(0, end - 1)(dice_);
}

std::string StoreOfEverything::any_name() {
    static const std::vector<std::string> begins{
        "=1+1 ", "+a, ", "'q' ", "\"x\", ", "@ ", "a;b ", "\xF0\x9F\x90\x9F ", "..", "\xE6\xBF\xA1 \\n ", "%s "};
    return begins[static_cast<std::size_t>(below(static_cast<int>(begins.size())))] + std::to_string(++made_);
}

std::string StoreOfEverything::any_shipped() {
    const std::vector<std::string> names = store.ingredient_names();
    return names[static_cast<std::size_t>(below(static_cast<int>(names.size())))];
}

Date StoreOfEverything::any_day() {
    day_ += std::chrono::days(below(2));
    return day_;
}

void StoreOfEverything::change_ingredient() {
    Ingredient ingredient = store.ingredient(any_shipped());
    if (below(3) == 0) ingredient.name = any_name();
    if (ingredient.absorption.stated()) ingredient.absorption.value = ingredient.absorption.value * between(0.9, 1);
    if (ingredient.loose_density.stated()) ingredient.loose_density.value *= between(0.99, 1);
    ingredient.packs.push_back({between(0.5, 5) * kilogram, Money(below(1000), currency_named("GBP")), any_day(),
                                below(2) == 0 ? any_name() : std::string()});
    ingredient.packs.push_back({between(0.5, 5) * imperial_pint, std::nullopt, std::nullopt, {}});
    ingredient.note = "two\nlines, \"quoted\"";
    put_ingredients(store, {ingredient}, any_day());
}

void StoreOfEverything::add_mix() {
    Recipe recipe{any_name(), {}, "=purpose", {}, {}, {}, {}, {}};
    for (int parts = 1 + below(4); parts > 0; --parts)
        recipe.parts.push_back({"brown crumb", Share{between(0.1, 3)}, Preparation::as_bought});
    if (below(2) == 0)
        recipe.parts = {{"fishmeal, brown", between(0.1, 3) * kilogram, Preparation::as_bought},
                        {"brown crumb", between(0.1, 3) * litre, Preparation::as_bought}};
    put_recipes(store, {recipe}, any_day());
}

void StoreOfEverything::change_strategy() {
    const std::vector<std::string> names = store.strategy_names();
    Strategy strategy = store.strategy(names[static_cast<std::size_t>(below(static_cast<int>(names.size())))]);
    if (below(2) == 0) strategy.name = any_name();
    strategy.length *= between(1, 1.01);
    strategy.water.depth = between(1, 5) * metre;
    strategy.water.temperature = Temperature::from_celsius(between(5, 25));
    strategy.note = any_name();
    put_strategies(store, {strategy}, any_day());
}

void StoreOfEverything::add_venue() {
    const std::vector<WrittenEntry> venues = store.entries().written(EntryKind::venue);
    copy_entry(store, EntryKind::venue, venues.front().name, any_name(), any_day());
}

void StoreOfEverything::rename_one() {
    rename_entry(store, EntryKind::ingredient, any_shipped(), any_name());
}

void StoreOfEverything::remove_one() {
    try {
        const std::string name = any_name();
        copy_entry(store, EntryKind::ingredient, any_shipped(), name, any_day());
        store.change([&] {
            for (const int price : {100, 120, 130})
                store.put_price(name,
                                {1.0 * kilogram, Money(price + below(9), currency_named("EUR")), any_day(), "a shop"});
        });
        remove_entry(store, EntryKind::ingredient, name, any_day());
    } catch (const Error&) {
        return;  // its name may be taken
    }
}

void StoreOfEverything::tell_price() {
    const std::string name = any_shipped();
    store.change([&] {
        for (int times = 0; times < 2; ++times)
            store.put_price(name, {5.0 * kilogram, Money(below(10000), currency_named("GBP")), any_day(), "mill"});
    });
}

void StoreOfEverything::buy_some() {
    Arrival arrival{any_shipped(), StockKind::ingredient, {}};
    arrival.lot.got_on = any_day();
    arrival.lot.left = {1 + below(5'000'000)};
    arrival.lot.state = below(2) == 0 ? StockState::dry : StockState::frozen;
    if (below(2) == 0) arrival.lot.best_before = arrival.lot.got_on + std::chrono::days(below(400));
    if (below(2) == 0) arrival.lot.paid = Money(below(5000), currency_named("GBP"));
    if (below(2) == 0) arrival.lot.shop = any_name();
    store.change([&] {
        const StockReceipt receipt = store.shed().add(Happening::bought, arrival);
        if (below(2) == 0) store.shed().note_mark("2026-" + std::to_string(++made_), receipt.entry);
    });
}

void StoreOfEverything::use_some() {
    const std::vector<StockItem> items = store.shed().items(100);
    if (items.empty()) return;
    const StockItem& item = items[static_cast<std::size_t>(below(static_cast<int>(items.size())))];
    const Milligrams some{1 + item.left.count / (2 + below(3))};
    try {
        if (below(2) == 0)
            take(store, Happening::used, {item.name, some}, {any_day(), std::nullopt});
        else
            store.change([&] { store.shed().book({{item.name, some}}, any_name(), any_day()); });
    } catch (const Error&) {
        return;  // counted since
    }
}

void StoreOfEverything::count_some() {
    const std::vector<StockItem> items = store.shed().items(100);
    if (items.empty()) return;
    const Date on = any_day() + std::chrono::days(400);
    try {
        count(store, {items.front().name, StockKind::ingredient, {below(9'000'000)}, std::nullopt}, {on, std::nullopt});
    } catch (const Error&) {
        return;
    }
}

void StoreOfEverything::undo_some() {
    try {
        undo(store, std::nullopt, any_day() + std::chrono::days(800));
    } catch (const Error&) {
        return;
    }
}

void StoreOfEverything::log_session() {
    LoggedSession session{store.strategy_names().front()};
    session.start = "09:30";
    session.length = between(1, 9) * hour;
    session.anglers = 1 + below(4);
    session.page = below(2) == 0 ? "page" + std::to_string(++made_) : std::string();
    session.venue = any_name();
    if (below(2) == 0) session.water = Temperature::from_celsius(between(4, 24));
    if (below(2) == 0) session.cost = Money(below(9999), currency_named("GBP"));
    session.note = "a note,\nof two lines";
    store.change([&] {
        const std::int64_t id = store.log().add({0, any_day(), 0, session});
        store.log().add({0, day_, id, LoggedPutIn{between(-90, 9000) * second, any_name()}});
        store.log().add({0, day_, id, LoggedUse{any_shipped(), between(0.1, 4) * kilogram}});
        store.log().add({0, day_, id, LoggedCatch{std::nullopt, "bream", below(40), between(0.1, 9) * kilogram}});
        if (below(2) == 0) store.log().undo(std::nullopt, day_);
    });
}

void StoreOfEverything::log_bait() {
    LoggedMix mix{"silt bed",
                  "firm",
                  Ratio(between(1, 1.4)),
                  between(0, 0.2),
                  between(0.5, 2) * kilogram,
                  between(0.3, 1) * kilogram,
                  between(0, 0.1) * kilogram,
                  {}};
    mix.parts.push_back({any_shipped(), between(0.1, 1) * kilogram, Ratio(between(0.05, 0.15))});
    mix.parts.push_back({any_name(), between(0.1, 1) * kilogram, std::nullopt});
    LoggedLook look{"silt bed", {}, between(0.1, 0.4) * litre, Squeeze::hard, between(0.1, 3) * metre};
    look.holds = between(1, 900) * second;
    look.carpet = between(0.1, 3) * metre;
    store.change([&] {
        const std::int64_t id = store.log().add({0, any_day(), 0, mix});
        store.log().believe(id, below(2) == 0);
        store.log().add({0, day_, 0,
                         LoggedSoak{"fishmeal pellet 4 mm", between(0.05, 0.5) * kilogram, between(0.1, 0.9) * kilogram,
                                    between(60, 900) * second, Temperature::from_celsius(between(5, 20))}});
        store.log().add(
            {0, day_, 0, LoggedWeight{any_shipped(), {}, between(0.2, 2) * litre, between(0.1, 1) * kilogram}});
        store.log().add({0, day_, 0, look});
        store.log().add({0, day_, 0, LoggedBag{any_shipped()}});
    });
}

void StoreOfEverything::undo_log() {
    store.change([&] { store.log().undo(std::nullopt, any_day()); });
}

void StoreOfEverything::learn_something() {
    LearntWater water{between(-1, 1), between(-1, 1), {}, 3, {}};
    for (int bag = 0; bag < 2; ++bag)
        water.bags.push_back({any_name(), between(-2, 1), between(-2, 1), below(50), between(0, 1), 0});
    for (int i = 0; i < 18; ++i) water.factor.push_back(between(-1, 1));
    LearntMix mix{"silt bed", LearntFactor{between(-1, 1), between(0, 1), below(9)}, std::nullopt,
                  LearntFactor{between(-1, 1), between(0, 1), below(9)}};
    store.change([&] {
        store.log().keep_learnt_before({{any_shipped(), "name = \"was\"\n", "name = \"is\"\n"}});
        store.log().put_learnt(water, {mix});
    });
}

void StoreOfEverything::tell_usual() {
    store.change([&] {
        store.put_usual("pump", {"80 ml"});
        store.put_usual("kit", {"cup 250", "pot " + std::to_string(20 + below(30))});
        if (below(3) == 0) store.put_usual("pump", {});
    });
}

}  // namespace baitwright
