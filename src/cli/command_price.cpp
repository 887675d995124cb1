#include "cli/commands.h"

#include <algorithm>

#include "cli/read_stock.h"
#include "cli/result_formats.h"
#include "library/change_shed.h"
#include "library/currency_in_use.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"
#include "questions/price_question.h"
#include "questions/read_flags.h"
#include "report/display.h"
#include "report/price_report.h"

namespace baitwright {

namespace {

/// "price lst": a second word of the command that was mistyped, in place of an ingredient without its price.
void refuse_mistyped_verb(const Arguments& arguments, const Store& store) {
    const std::string& word = arguments.words().front();
    if (arguments.has("--is") || store.ingredient_to_mend(word) || said_name(word, store.ingredient_names()).name)
        return;
    if (const auto verb = nearest_name(word, {"list", "history"}))
        throw UsageError("incomplete-command", "'price " + word + "' is not a command",
                         "did you mean 'price " + *verb + "'?");
}

CommandResult tell(const Arguments& arguments, const Surroundings& around) {
    const Date on = day_of(arguments, around);
    Store store = store_of(around);
    refuse_mistyped_verb(arguments, store);
    const std::string& word = arguments.words().front();
    const auto known = store.ingredient_to_mend(word);
    const Ingredient ingredient = known ? *known : store.ingredient(word);
    if (!arguments.has("--is"))
        throw UsageError(
            "no-price", "what does a pack of it cost?",
            "say it with --is £4.20; or see what it cost with: baitwright price history \"" + ingredient.name + "\"");
    Pack told = priced_pack(arguments, ingredient, on, pack_sizes_typed(ingredient));
    told.shop = shop_of(arguments, store);
    const PriceChange change = flag_value("--is", [&] { return tell_price(store, ingredient.name, told); });
    return given(arguments, reply_of(change, price_change_told, price_change_json, price_change_rows));
}

CommandResult shown(const Arguments& arguments, const std::string& command, const PriceList& list) {
    return given(arguments, {0, [&] { return price_list_told(list); }, [&] { return price_list_json(command, list); },
                             [&] { return price_list_rows(list); }});
}

CommandResult list_prices(const Arguments& arguments, const Surroundings& around) {
    Store store = store_of(around);
    const std::string shop = shop_of(arguments, store);
    std::vector<std::string> names = arguments.words();
    if (names.empty()) names = store.ingredient_names();
    std::vector<PriceLine> lines;
    const Currency* in = currency_in_use(store);
    for (const std::string& name : names)
        for (PriceLine& line : prices_now(store.ingredient(name), around.today, in))
            if (shop.empty() || (line.pack && folded_name(line.pack->shop) == folded_name(shop)))
                lines.push_back(std::move(line));
    return shown(arguments, "price list", price_list(std::move(lines)));
}

CommandResult price_history(const Arguments& arguments, const Surroundings& around) {
    Store store = store_of(around);
    const Ingredient ingredient = store.ingredient(arguments.words().front());
    auto lines = prices_ever(ingredient, store.old_prices(ingredient.name), around.today, currency_in_use(store));
    return shown(arguments, "price history", price_list(std::move(lines)));
}

const Flag prices_csv_flag{"--csv", "", "as CSV for a spreadsheet, unrounded"};

}  // namespace

CommandSpec command_price() {
    return {"price",
            "what a pack of an ingredient costs now; the old price is kept",
            {{"INGREDIENT", "its name"}},
            {{"--pack", "SIZE", "size of the pack: 1kg, 500ml; leave it out where there is only one size", false,
              "price-pack"},
             {"--is", "PRICE", "what the pack costs: £4.20, 340p, \"3.40 EUR\""},
             {"--shop", "SHOP", "where", false, "shop"},
             {"--new-shop", "", "this shop is new: no price from it yet"},
             {"--on", "DATE", "the day you saw it: 2026-03-01 (default: today)"},
             prices_csv_flag},
            tell,
            R"(baitwright price "fishmeal, brown" --pack 1kg --is £4.40 --shop "the mill"
baitwright price "brown crumb" --pack 1kg --is £2.10)",
            Effect::stores};
}

CommandSpec command_price_list() {
    return {"price list",
            "the prices in use, which are old and which are missing",
            {{"INGREDIENT", "only these", true, false}},
            {{"--shop", "SHOP", "only of this shop"}, prices_csv_flag},
            list_prices,
            R"(baitwright price list "brown crumb"
baitwright price list --shop "the mill")"};
}

CommandSpec command_price_history() {
    return {"price history",
            "every price that an ingredient ever had, the oldest first",
            {{"INGREDIENT", "its name"}},
            {prices_csv_flag},
            price_history,
            R"(baitwright price history "brown crumb"
baitwright price history "brown crumb" --csv)"};
}

}  // namespace baitwright
