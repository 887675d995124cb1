#include "page/shed_answers.h"

#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "page/json_words.h"
#include "page/phone_errors.h"
#include "page/phone_shed.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/said_name.h"
#include "questions/read_flags.h"
#include "report/reply.h"
#include "report/stock_json.h"
#include "report/stock_text.h"

namespace baitwright {

namespace {

/// The name as the shelf or the shed has it.
StockName stock_name_here(const std::string& word, const Shelf& shelf, const PhoneShed& shed) {
    std::vector<std::string> names = shed.names();
    for (std::string& name : shelf.ingredient_names()) names.push_back(std::move(name));
    for (std::string& name : shelf.recipe_names()) names.push_back(std::move(name));
    const auto meant = said_name(word, names).name;
    if (!meant)
        throw NotFound(fault_of_name(
            word, names,
            {"unknown-stock", "no ingredient or mix is called " + in_quotes(word), "choose it from the list"}));
    if (auto ingredient = shelf.find_ingredient(*meant))
        return {ingredient->name, StockKind::ingredient, std::move(ingredient)};
    return {*meant, StockKind::mix, std::nullopt};
}

Date shed_day(const Json& told, Date today) {
    const std::string text = word_of(told, "on");
    if (text.empty()) return today;
    return flag_value("--on", [&] {
        const Date on = parse_date(text);
        if (on > today)
            throw InputError("in-the-future", date_text(on) + " has not come yet; today is " + date_text(today),
                             "enter what has happened, not what is planned");
        return on;
    });
}

/// What was bought: its price is that of a pack.
void buy(OpenedBank& bank, const Json& told, ShedEntry& entry, const Arguments& arguments) {
    if (!entry.of.ingredient)
        throw UsageError("unknown-ingredient", "of: a mix is not bought", "enter what went into it");
    const Packs packs = flag_value("AMOUNT", [&] { return read_packs(word_of(told, "amount"), *entry.of.ingredient); });
    const std::string price = word_of(told, "price");
    entry.shop = word_of(told, "shop");
    if (price.empty()) return;
    const Money one = flag_value("--price", [&] { return read_money(price, arguments); });
    entry.paid = Money(round_half_even(static_cast<double>(one.minor()) * packs.count), one.currency());
    bank.put_price(*entry.of.ingredient, {packs.size, one, entry.on, entry.shop});
}

void enter(OpenedBank& bank, const Json& told, PhoneShed& shed, const Arguments& arguments) {
    ShedEntry entry{word_of(told, "what"), stock_name_here(word_of(told, "of"), bank.here(), shed), {}, {}};
    const std::string amount = word_of(told, "amount");
    entry.on = shed_day(told, bank.today);
    if (entry.what != "buy" && entry.what != "use" && entry.what != "waste" && entry.what != "count")
        throw UsageError("unknown-word", "nothing can be " + in_quotes(entry.what) + " in the shed",
                         "it can be bought, used, thrown out or counted");
    entry.mass = entry.what == "count" ? read_counted_mass(amount, entry.of) : read_stock_mass(amount, entry.of);
    if (entry.what == "buy") buy(bank, told, entry, arguments);
    shed.enter(entry);
}

}  // namespace

Json take_shed(OpenedBank& bank, const Json& request, const Arguments& arguments) {
    PhoneShed shed(bank.here(), bank.have, bank.made_on);
    Json refused = Json::array();
    const std::vector<Json> entries = items_of(request, "entries");
    for (std::size_t i = 0; i < entries.size(); ++i) {
        try {
            enter(bank, entries[i], shed, arguments);
        } catch (const Error& error) {
            const Json errors = phone_errors(error.faults());
            for (Json fault : errors["errors"]) {
                fault["entry"] = i;
                refused.push_back(std::move(fault));
            }
        }
    }
    bank.in_shed = shed.stock();
    const Reply reply = reply_of(shed.answer(bank.today), shed_told, shed_json, shed_rows);
    return {{"status", reply.status}, {"told", told_json(reply.told())}, {"json", reply.json()}, {"refused", refused}};
}

}  // namespace baitwright
