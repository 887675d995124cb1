#include "answers/money/cost_strategy.h"

#include <algorithm>
#include <set>

#include "answers/money/cost_range.h"
#include "answers/money/priced_need.h"
#include "answers/shared/stale_prices.h"
#include "answers/strategy/kept_in_feeds.h"
#include "answers/strategy/named_in_strategy.h"
#include "bait/one_currency.h"
#include "bait/price_book.h"
#include "quantities/fault.h"
#include "quantities/listed.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

void set_prices(UnrolledStrategy& unrolled, const StrategyRequest& what_if) {
    std::set<std::string> names;
    for (const IngredientNeed& need : unrolled.totals) names.insert(need.ingredient.name);
    for (const StrategyRequest::Price& price : what_if.prices) {
        const auto name = what_if.absent == StrategyRequest::Absent::refused
                              ? named_in(price.of, names, "'" + unrolled.name + "' takes")
                              : exactly_among(price.of, names);
        for (IngredientNeed& need : unrolled.totals)
            if (name && need.ingredient.name == *name) need.ingredient.packs = {price.pack};
    }
}

/// The packs decide, for they are what is bought; the stock only where no pack has a price.
std::vector<PricedIn> currencies_of(const UnrolledStrategy& unrolled, const StockOnHand& stock,
                                    const std::optional<Date>& on) {
    std::vector<PricedIn> priced;
    for (const IngredientNeed& need : unrolled.totals) add_currencies(priced, need.ingredient);
    if (!priced.empty()) return priced;
    for (const IngredientNeed& need : unrolled.totals)
        for (const StockLot& lot : stock.lots(need.ingredient.name, on))
            if (lot.paid) priced.push_back({need.ingredient.name, &lot.paid->currency()});
    return priced;
}

const Currency* currency_of(const std::vector<PricedIn>& priced, const CostRequest& request) {
    if (!request.currency) return answer_currency(priced, request.usual_currency);
    const bool any = std::any_of(priced.begin(), priced.end(),
                                 [&](const PricedIn& one) { return *one.currency == *request.currency; });
    return any ? request.currency : nullptr;
}

std::vector<PricedIngredient> priced_needs(const UnrolledStrategy& unrolled, const StockOnHand& stock,
                                           const std::optional<Date>& on, const Currency* in) {
    std::vector<PricedIngredient> priced;
    for (const IngredientNeed& need : unrolled.totals)
        priced.emplace_back(need.ingredient, stock.lots(need.ingredient.name, on), in);
    return priced;
}

/// What the lines hold before the pence are whole.
struct ExactLines {
    std::vector<double> minor;  // of each line what is bought, then what is from stock
    std::vector<bool> priced;
};

/// Whole pence for each line, which sum to the rounded sum.
void settle_pence(StrategyCost& cost, const ExactLines& exact) {
    const std::vector<std::int64_t> minor = round_to_sum(exact.minor);
    for (std::size_t i = 0; i < cost.lines.size(); ++i) {
        CostLine& line = cost.lines[i];
        if (!exact.priced[i]) continue;
        const std::int64_t bought = minor[2 * i], from_stock = minor[2 * i + 1];
        line.used = Money(bought + from_stock, *cost.currency);
        line.left_value = Money(line.outlay->minor() - bought, *cost.currency);
        cost.used_minor += line.used->minor();
        cost.from_stock_minor += from_stock;
        cost.outlay_minor += line.outlay->minor();
        cost.left_over_minor += line.left_value->minor();
    }
}

void buy(StrategyCost& cost, const PricedIngredient& priced, const NeedCost& need, CostLine& line) {
    line.outlay = Money(need.packs.outlay_minor, *cost.currency);
    Mass bought;
    for (PackBought& packs : packs_bought(priced.offers(), need.packs.counts)) {
        bought += packs.mass_of_all();
        cost.packs.push_back(std::move(packs));
    }
    line.left_over = std::max(Mass{}, bought - (line.need - line.from_stock));
    cost.proven = cost.proven && need.packs.proven();
}

void leave_out(StrategyCost& cost, const PricedIngredient& priced, const std::string& name) {
    cost.unpriced.push_back(name);
    if (priced.elsewhere()) cost.elsewhere.push_back(*priced.elsewhere());
}

void add_line(StrategyCost& cost, const PricedIngredient& priced, const IngredientNeed& total, ExactLines& exact) {
    const NeedCost need = priced.cost_of(total.mass);
    CostLine line{total.ingredient.name, total.mass, need.from_stock, {}, total.ingredient.keeps, {}, {}, {}};
    const bool is_priced = need.priced && cost.currency;
    if (is_priced)
        buy(cost, priced, need, line);
    else if (total.mass > Mass{})
        leave_out(cost, priced, total.ingredient.name);
    if (is_priced && need.paid_elsewhere) cost.paid_elsewhere.push_back(total.ingredient.name);
    exact.priced.push_back(is_priced);
    exact.minor.push_back(is_priced ? need.used_of_bought : 0);
    exact.minor.push_back(is_priced ? need.used_of_stock : 0);
    cost.lines.push_back(std::move(line));
}

/// The oldest of the prices that a line is reckoned by, of those whose day is known; null where none is.
const Pack* oldest_price(const StrategyCost& cost, const CostLine& line, const PricedIngredient& priced) {
    const Pack* oldest = priced.pricing() && priced.pricing()->on ? &*priced.pricing() : nullptr;
    for (const PackBought& bought : cost.packs)
        if (bought.name == line.name && bought.pack.on && (!oldest || bought.pack.on < oldest->on))
            oldest = &bought.pack;
    return oldest;
}

void warn_of_stale_prices(StrategyCost& cost, const std::vector<PricedIngredient>& priced, Date on) {
    std::vector<std::string> stale;
    for (std::size_t i = 0; i < cost.lines.size(); ++i) {
        const CostLine& line = cost.lines[i];
        if (!line.used || !(line.need > Mass{})) continue;
        const Pack* oldest = oldest_price(cost, line, priced[i]);
        if (oldest && is_stale(*oldest, on)) stale.push_back(line.name + " (" + date_text(*oldest->on) + ")");
    }
    if (auto warning = stale_warning(stale)) cost.warnings.push_back(*std::move(warning));
}

void warn_of_prices(StrategyCost& cost, const std::vector<PricedIngredient>& priced, const std::optional<Date>& on) {
    if (auto warning = no_price_warning(priced_nowhere(cost.unpriced, cost.elsewhere), "the cost"))
        cost.warnings.push_back(*std::move(warning));
    if (!cost.elsewhere.empty())
        cost.warnings.push_back(
            other_currency_warning(cost.elsewhere, *cost.asked_in, leaves_out("the cost", cost.elsewhere.size())));
    if (!cost.paid_elsewhere.empty())
        cost.warnings.push_back({"paid-in-other-currency",
                                 "not all that the shed holds of " + listed(cost.paid_elsewhere) + " was paid for in " +
                                     std::string(cost.currency->code) + ", so it counts at the price of now"});
    if (on) warn_of_stale_prices(cost, priced, *on);
    if (!cost.proven)
        cost.warnings.push_back(
            {"not-proven", "there are so many packs to choose from that other whole packs may cost less"});
}

}  // namespace

double StrategyCost::per_session() const {
    return static_cast<double>(used_minor) / unrolled.times;
}

double StrategyCost::per_hour() const {
    return per_session() / unrolled.length.in(hour);
}

double StrategyCost::per_angler() const {
    return static_cast<double>(used_minor) / unrolled.people;
}

std::optional<double> StrategyCost::per_kilogram_wet() const {
    if (!(unrolled.wet_mass > Mass{})) return std::nullopt;
    return static_cast<double>(used_minor) / unrolled.wet_mass.in(kilogram);
}

std::optional<double> StrategyCost::per_litre() const {
    if (!(unrolled.wet_volume > Volume{})) return std::nullopt;
    return static_cast<double>(used_minor) / unrolled.wet_volume.in(litre);
}

StrategyCost cost_strategy(const Shelf& shelf, const Strategy& strategy, const StockOnHand& stock,
                           const CostRequest& request) {
    StrategyCost cost;
    const StrategyRequest what_if = with_kept(request.what_if, strategy, stock, request.on);
    cost.unrolled = unroll_strategy(shelf, strategy, what_if);
    set_prices(cost.unrolled, request.what_if);
    cost.priced_in = currencies_of(cost.unrolled, stock, request.on);
    cost.currency = currency_of(cost.priced_in, request);
    cost.asked_in = request.currency ? request.currency : cost.currency;
    const std::vector<PricedIngredient> priced = priced_needs(cost.unrolled, stock, request.on, cost.asked_in);
    cost.warnings = cost.unrolled.warnings;
    ExactLines exact;
    for (std::size_t i = 0; i < priced.size(); ++i) add_line(cost, priced[i], cost.unrolled.totals[i], exact);
    settle_pence(cost, exact);
    warn_of_prices(cost, priced, request.on);
    if (cost.currency && request.ranges == CostRequest::Ranges::drawn)
        cost.used_range = used_range(cost.unrolled, priced, what_if, request.seed);
    return cost;
}

}  // namespace baitwright
