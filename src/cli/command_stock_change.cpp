#include "cli/commands.h"

#include <cmath>

#include "answers/shared/wanted_feel.h"
#include "bait/recipe.h"
#include "bait/stock_rules.h"
#include "cli/read_stock.h"
#include "cli/result_formats.h"
#include "library/change_shed.h"
#include "questions/read_flags.h"
#include "report/replies.h"

namespace baitwright {

namespace {

const Flag on_flag{"--on", "DATE", "the day it happened: 2026-03-01 (default: today)"};
const Flag best_before_flag{"--best-before", "DATE", "the date on the bag (default: by how long it keeps)"};
const Flag cold_flag{"--cold", "", "kept in the cold"};
const Flag frozen_flag{"--frozen", "", "kept in the freezer"};
const Flag only_cold_flag{"--cold", "", "only what is kept in the cold"};
const Flag only_frozen_flag{"--frozen", "", "only what is in the freezer"};
const Flag lots_csv_flag{"--csv", "", "a row for each lot touched, as CSV, unrounded"};
const Word amount_word{"AMOUNT", "400g, 2pt, \"1 pack\", 2x5kg"};

CommandResult run_buy(const Arguments& arguments, const Surroundings& around) {
    const Date on = day_of(arguments, around);
    const auto best = best_before_of(arguments, on);
    Store store = store_of(around);
    const Ingredient ingredient = store.ingredient(arguments.words().at(0));
    Purchase purchase = purchase_of(ingredient, arguments.words().at(1), on);
    purchase.pack.shop = shop_of(arguments, store);
    read_flag(arguments, "--price",
              [&](const std::string& text) { purchase.pack.price = read_money(text, arguments); });
    if (const auto state = state_of(arguments)) purchase.lot.state = *state;
    purchase.lot.best_before = best ? best : best_before(on, purchase.lot.state, ingredient.keeps);
    return given(arguments,
                 stock_change_reply("stock buy", flag_value("--price", [&] { return buy(store, purchase); })));
}

/// What it was wetted to: as told, or the mix's own, which another day may be another.
std::string feel_kept(const Arguments& arguments, const Recipe& mix, const Store& store) {
    const std::vector<Feel> feels = store.feels();
    const Feel* own = find_feel(feels, mix.feel.empty() ? "firm" : mix.feel);
    return flag_value("--feel",
                      [&] { return wanted_feel(feels, own ? *own : Feel{}, arguments.value("--feel")).name; });
}

CommandResult run_keep(const Arguments& arguments, const Surroundings& around) {
    const Date on = day_of(arguments, around);
    const auto best = best_before_of(arguments, on);
    if (arguments.has("--refrozen") && !arguments.has("--frozen"))
        throw UsageError("unfit-flag", "--refrozen goes with --frozen",
                         "a mix that is thawed for good keeps a day or two");
    Store store = store_of(around);
    const Recipe mix = store.recipe(arguments.words().at(0));
    const StockName named{mix.name, StockKind::mix, {}};
    Arrival arrival{named.name, StockKind::mix, {}};
    arrival.lot.left = read_stock_mass(arguments.words().at(1), named);
    arrival.lot.state = state_of(arguments).value_or(StockState::cold);
    arrival.lot.got_on = on;
    arrival.lot.refrozen = arguments.has("--refrozen") ? most_refrozen : 0;
    arrival.lot.best_before = best ? best : best_before(on, arrival.lot.state, keeping_of_mix());
    arrival.lot.feel = feel_kept(arguments, mix, store);
    return given(arguments, stock_change_reply("stock keep", keep(store, arrival)));
}

CommandResult run_count(const Arguments& arguments, const Surroundings& around) {
    const Reach reach{day_of(arguments, around), state_of(arguments)};
    const auto best = best_before_of(arguments, reach.on);
    Store store = store_of(around);
    const StockName named = stock_name(arguments.words().at(0), store);
    const Milligrams counted = read_counted_mass(arguments.words().at(1), named);
    return given(arguments,
                 stock_change_reply("stock count", count(store, {named.name, named.kind, counted, best}, reach)));
}

CommandResult run_take(const Arguments& arguments, const Surroundings& around, Happening what) {
    const Reach reach{day_of(arguments, around), state_of(arguments)};
    Store store = store_of(around);
    const StockName named = stock_name(arguments.words().at(0), store);
    const StockNeed need{named.name, read_stock_mass(arguments.words().at(1), named)};
    return given(arguments, stock_change_reply(what == Happening::used ? "stock use" : "stock waste",
                                               take(store, what, need, reach)));
}

CommandResult run_use(const Arguments& arguments, const Surroundings& around) {
    return run_take(arguments, around, Happening::used);
}

CommandResult run_waste(const Arguments& arguments, const Surroundings& around) {
    return run_take(arguments, around, Happening::wasted);
}

std::int64_t read_entry(const std::string& text) {
    const double number = parse_number(text);
    if (!(number >= 1 && number <= 9e15) || number != std::floor(number))
        throw InputError("out-of-range", "'" + text + "' is not the number of an entry",
                         "see them with: baitwright stock history NAME");
    return static_cast<std::int64_t>(number);
}

CommandResult run_undo(const Arguments& arguments, const Surroundings& around) {
    std::optional<std::int64_t> entry;
    if (!arguments.words().empty()) entry = flag_value("ENTRY", [&] { return read_entry(arguments.words().front()); });
    Store store = store_of(around);
    return given(arguments, stock_change_reply("stock undo", undo(store, entry, around.today)));
}

}  // namespace

CommandSpec command_stock_buy() {
    return {"stock buy",
            "add a bag to the shed",
            {{"INGREDIENT", "its name"}, amount_word},
            {{"--price", "PRICE", "what a pack cost, as in £2.10; it becomes the price in use"},
             {"--shop", "SHOP", "where", false, "shop"},
             {"--new-shop", "", "this shop is new: no price from it yet"},
             on_flag,
             best_before_flag,
             cold_flag,
             frozen_flag,
             lots_csv_flag},
            run_buy,
            R"(baitwright stock buy "brown crumb" 1kg --price £2.10 --shop "the mill"
baitwright stock buy "maize meal" 2x500g --best-before 2027-06-30)",
            Effect::stores};
}

CommandSpec command_stock_keep() {
    return {"stock keep",
            "put a made-up mix by: in the cold for a day or two, or in the freezer",
            {{"RECIPE", "the mix"}, {"AMOUNT", "what it weighs, wet: 1.2kg"}},
            {{"--feel", "FEEL", "what it was wetted to (default: the mix's own)"},
             {"--cold", "", "in the cold, where it keeps two days, as without this flag"},
             {"--frozen", "", "in the freezer, where it keeps three months"},
             {"--refrozen", "", "it was frozen and thawed before; not to be done a second time"},
             on_flag,
             {"--best-before", "DATE", "in place of the usual: two days cold, three months frozen"},
             lots_csv_flag},
            run_keep,
            R"(baitwright stock keep "silt bed" 1.2kg --frozen
baitwright stock keep "silt bed" 800g --feel soft)",
            Effect::stores};
}

CommandSpec command_stock_count() {
    return {"stock count",
            "say what is really there; the ledger is put right by the difference",
            {{"NAME", "the ingredient or mix"}, {"AMOUNT", "all there is of it: 400g, 2pt, \"1 pack\", none"}},
            {on_flag,
             {"--best-before", "DATE", "if there is more than the ledger knew: a new bag, with this date"},
             only_cold_flag,
             only_frozen_flag,
             lots_csv_flag},
            run_count,
            R"(baitwright stock count "brown crumb" 1.5kg
baitwright stock count "brown crumb" none)",
            Effect::stores};
}

CommandSpec command_stock_use() {
    return {"stock use",
            "take out what was used, from the bag that expires first",
            {{"NAME", "the ingredient or mix"}, amount_word},
            {on_flag, only_cold_flag, only_frozen_flag, lots_csv_flag},
            run_use,
            R"(baitwright stock use "brown crumb" 400g
baitwright stock use "silt bed" 500g --frozen)",
            Effect::stores};
}

CommandSpec command_stock_waste() {
    return {"stock waste",
            "take out what was thrown away, from the bag that expires first",
            {{"NAME", "the ingredient or mix"}, amount_word},
            {on_flag, only_cold_flag, only_frozen_flag, lots_csv_flag},
            run_waste,
            R"(baitwright stock waste "fresh liquidised bread" 200g
baitwright stock waste "silt bed" 300g --cold)",
            Effect::stores};
}

CommandSpec command_stock_undo() {
    return {"stock undo",
            "undo an entry; the ledger keeps it, and the undoing too",
            {{"ENTRY", "its number (default: the last one)", false, false}},
            {lots_csv_flag},
            run_undo,
            "baitwright stock undo\nbaitwright stock undo 3",
            Effect::stores};
}

}  // namespace baitwright
