#include "library/change_shed.h"

#include <algorithm>
#include <cmath>

#include "answers/mix/mix_for_once.h"
#include "answers/shared/stale_prices.h"
#include "bait/one_currency.h"
#include "bait/pricing.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"
#include "questions/stock_amount.h"
#include "report/display.h"

namespace baitwright {

namespace {

template <class Work>
StockChangeAnswer changed(Store& store, Work&& work) {
    StockReceipt receipt;
    store.change([&] {
        Shed shed = store.shed();
        receipt = work(shed);
    });
    return stock_change_answer(std::move(receipt));
}

std::optional<Money> paid_for(const Purchase& purchase) {
    if (!purchase.pack.price) return std::nullopt;
    const double minor = static_cast<double>(purchase.pack.price->minor()) * purchase.packs;
    return Money(round_half_even(minor), purchase.pack.price->currency());
}

std::vector<std::string> names_in(const ResolvedMix& mix) {
    std::vector<std::string> names;
    for (const Ingredient* ingredient : ingredients_of(mix))
        if (std::find(names.begin(), names.end(), ingredient->name) == names.end()) names.push_back(ingredient->name);
    return names;
}

/// Where other prices in use are in other currencies than this one: how many, and what to type.
std::optional<Warning> prices_apart(const Store& store, const Money& told) {
    std::vector<std::string> others;
    std::int64_t prices = 0;
    const CurrencyCount* most = nullptr;
    const std::vector<CurrencyCount> counts = store.currencies_in_use();
    for (const CurrencyCount& count : counts) {
        if (*count.currency == told.currency()) continue;
        if (!most || count.prices > most->prices) most = &count;
        others.emplace_back(count.currency->code);
        prices += count.prices;
    }
    if (prices == 0) return std::nullopt;
    return Warning{"other-currency",
                   (prices == 1 ? "1 other price is in " : std::to_string(prices) + " other prices are in ") +
                       listed(others) + ", which " + (others.size() == 1 ? "does" : "do") + " not add up with " +
                       std::string(told.currency().code) + "; tell this one in " + std::string(most->currency->code) +
                       ", or put all into one with " + in_quotes(convert_command(told.currency()))};
}

/// How a price is told anew, but for the price.
std::string price_command(const std::string& ingredient, const Pack& pack) {
    std::string size = typed_pack(pack);
    size.erase(std::remove(size.begin(), size.end(), ' '), size.end());
    std::string command = "baitwright price \"" + ingredient + "\" --pack " + size + " --is PRICE";
    if (!pack.shop.empty()) command += " --shop \"" + pack.shop + "\"";
    return command;
}

/// Whether that many grams of such packs cost what was paid for the lot.
bool was_paid_for(const Pack& pack, const Ingredient& ingredient, const StockReceipt::Line& line) {
    if (!pack.price || pack.on != line.lot.got_on || pack.shop != line.lot.shop) return false;
    const double packs = mass_of(-line.by) / mass_in(pack, ingredient);
    const double minor = static_cast<double>(pack.price->minor()) * packs;
    return pack.price->currency() == line.lot.paid->currency() &&
           std::abs(minor - static_cast<double>(line.lot.paid->minor())) <= 0.5 + 1e-3;
}

/// Of a purchase that was taken back: the price told with it, where it is still in use.
std::optional<Warning> price_that_stands(const Store& store, const StockReceipt::Line& line) {
    if (line.kind != StockKind::ingredient || line.by >= Milligrams{} || !line.lot.paid || line.lot.left > Milligrams{})
        return std::nullopt;  // only a purchase taken back leaves its bag empty
    const auto ingredient = store.find_ingredient(line.name);
    if (!ingredient) return std::nullopt;
    for (const Pack& pack : ingredient->packs) {
        if (!was_paid_for(pack, *ingredient, line)) continue;
        return Warning{"price-stands", "the price told with it still counts: " + shown_pack(pack) + " of " + line.name +
                                           " at " + money_text(*pack.price) +
                                           "; if that was wrong, tell the right one with '" +
                                           price_command(line.name, pack) + "'"};
    }
    return std::nullopt;
}

[[noreturn]] void refuse_missing(const std::string& recipe, const std::vector<std::string>& missing) {
    throw Error(FaultClass::answer_is_no,
                Fault{"not-in-shed",
                      "the shed holds none of " + listed(missing) + ", so no '" + recipe + "' can be made from it",
                      "if there is some, count it: baitwright stock count " + missing.front() + " AMOUNT"});
}

}  // namespace

Purchase purchase_of(const Ingredient& ingredient, const std::string& amount, Date on) {
    const StockName named{ingredient.name, StockKind::ingredient, ingredient};
    Purchase purchase;
    purchase.name = ingredient.name;
    purchase.lot.left = read_stock_mass(amount, named);
    const Packs packs = read_packs(amount, ingredient);
    purchase.packs = packs.count;
    purchase.pack = {packs.size, {}, on, {}};
    purchase.lot.state = usual_state(ingredient.keeps);
    purchase.lot.got_on = on;
    purchase.lot.best_before = best_before(on, purchase.lot.state, ingredient.keeps);
    return purchase;
}

StockReceipt enter_purchase(Store& store, const Purchase& purchase) {
    if (purchase.pack.price) store.put_price(purchase.name, purchase.pack);
    Arrival arrival{purchase.name, StockKind::ingredient, purchase.lot};
    arrival.lot.paid = paid_for(purchase);
    arrival.lot.shop = purchase.pack.shop;
    return store.shed().add(Happening::bought, arrival);
}

StockChangeAnswer buy(Store& store, const Purchase& purchase) {
    StockChangeAnswer answer = changed(store, [&](Shed&) { return enter_purchase(store, purchase); });
    if (!purchase.pack.price) return answer;
    answer.priced = purchase.pack;
    if (auto apart = prices_apart(store, *purchase.pack.price)) answer.warnings.push_back(*std::move(apart));
    return answer;
}

StockChangeAnswer keep(Store& store, const Arrival& arrival) {
    return changed(store, [&](Shed& shed) { return shed.add(Happening::kept, arrival); });
}

StockChangeAnswer count(Store& store, const StockCount& count, const Reach& reach) {
    return changed(store, [&](Shed& shed) { return shed.count(count, reach); });
}

StockChangeAnswer take(Store& store, Happening what, const StockNeed& need, const Reach& reach) {
    return changed(store, [&](Shed& shed) { return shed.take(what, need, reach); });
}

StockChangeAnswer undo(Store& store, std::optional<std::int64_t> entry, Date today) {
    StockChangeAnswer answer = changed(store, [&](Shed& shed) { return shed.undo(entry, today); });
    for (const StockReceipt::Line& line : answer.receipt.lines)
        if (auto still = price_that_stands(store, line)) answer.warnings.push_back(*std::move(still));
    return answer;
}

PriceChange tell_price(Store& store, const std::string& ingredient, const Pack& told) {
    PriceChange change;
    store.change([&] {
        change = price_change(store.ingredient(ingredient), told);
        store.put_price(ingredient, told);
    });
    if (auto apart = prices_apart(store, *told.price); apart && change.in_use)
        change.warnings.push_back(*std::move(apart));
    return change;
}

PriceConversion convert_prices(Store& store, const ConvertRequest& request) {
    if (request.doing == ConvertRequest::Doing::only_shown) return convert_prices(store.all_packs(), request);
    PriceConversion conversion;
    store.change([&] {
        conversion = convert_prices(store.all_packs(), request);
        for (const NamedPacks& each : conversion.changed) store.put_packs(each.name, each.packs);
    });
    return conversion;
}

OnHand on_hand_in_shed(const Recipe& recipe, const Shelf& shelf, const Shed& shed, const MixRequest& asked, Date today,
                       std::vector<Warning>& warnings) {
    OnHand on_hand;
    std::vector<std::string> missing;
    std::vector<StockItem> held;
    MixRequest names_alone = asked;
    names_alone.target = DryMass{9000.0 * kilogram};  // so much that whatever is added for once finds room
    for (const std::string& name : names_in(resolve_for_once(recipe, shelf, names_alone))) {
        auto item = shed.find(name);
        if (!item || item->lots.empty()) {
            missing.push_back("'" + name + "'");
            continue;
        }
        on_hand.items.push_back({name, mass_of(item->left)});
        held.push_back(*std::move(item));
    }
    if (!missing.empty()) refuse_missing(recipe.name, missing);
    for (Warning& warning : past_best(held, today)) warnings.push_back(std::move(warning));
    return on_hand;
}

void book_mix(Store& store, MixAnswer& answer, Date on) {
    std::vector<std::pair<std::string, Mass>> masses;  // summed before they are rounded
    const auto add = [&](const std::string& name, Mass mass) {
        const auto same =
            std::find_if(masses.begin(), masses.end(), [&](const auto& other) { return other.first == name; });
        if (same == masses.end())
            masses.emplace_back(name, mass);
        else
            same->second += mass;
    };
    for (const PartAnswer& part : answer.parts) add(part.name, part.mass);
    for (const AdditiveAnswer& additive : answer.additives) add(additive.name, additive.mass);
    std::vector<StockNeed> needs;
    needs.reserve(masses.size());
    for (const auto& [name, mass] : masses) needs.push_back({name, in_milligrams(mass)});
    store.change([&] { answer.booked = store.shed().book(needs, answer.recipe, on); });
    for (Warning& warning : stock_warnings(*answer.booked)) answer.warnings.push_back(std::move(warning));
}

}  // namespace baitwright
