#include "answers/money/shop_sessions.h"

#include <algorithm>
#include <numeric>
#include <set>
#include <tuple>

#include "answers/money/buy_packs.h"
#include "answers/money/pack_calendar.h"
#include "answers/money/shop_needs.h"
#include "answers/shared/stale_prices.h"
#include "answers/shared/stock_answer.h"
#include "bait/one_currency.h"
#include "bait/price_book.h"
#include "quantities/fault.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"
#include "quantities/sort_stably.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

std::vector<std::string> shops_of(const std::vector<ShoppedIngredient>& ingredients) {
    std::set<std::string> shops;
    for (const ShoppedIngredient& shopped : ingredients)
        for (const PackOnOffer& offer : shopped.packs)
            if (!offer.pack.shop.empty()) shops.insert(offer.pack.shop);
    return {shops.begin(), shops.end()};
}

/// What is left of the packs that are bought, where what the shed holds goes first.
Mass left_of_packs(const ShopLine& line) {
    return line.bought - (line.need - line.from_stock);
}

std::string shop_called(const std::string& said, const std::vector<std::string>& shops) {
    if (const auto shop = said_name(said, shops).name) return *shop;
    throw NotFound(fault_of_name(said, shops,
                                 {"unknown-shop", "'" + said + "' sells nothing of what is needed",
                                  shops.empty() ? "no price of what is needed names a shop"
                                                : "shops that sell something of it: " + listed(shops)}));
}

/// Builds the list out of what the programme over packs found.
class Shopper {
public:
    Shopper(std::vector<SessionNeed> sessions, const StockOnHand& stock, ShopRequest request)
        : stock_(stock), request_(std::move(request)) {
        answer_.sessions = std::move(sessions);
        sort_stably(answer_.sessions.begin(), answer_.sessions.end(),
                    [](const SessionNeed& a, const SessionNeed& b) { return a.on < b.on; });
    }

    ShopAnswer run() {
        std::vector<ShoppedIngredient> all = shopped_ingredients(answer_.sessions);
        shops_ = shops_of(all);
        for (std::string& shop : request_.at) shop = shop_called(shop, shops_);
        if (request_.rather_at) request_.rather_at = said_name(*request_.rather_at, shops_).name;
        answer_.rather_at = request_.rather_at;
        for (ShopRequest::Delivery& delivery : request_.deliveries) delivery.shop = shop_called(delivery.shop, shops_);
        take_currency(all);
        for (ShoppedIngredient& shopped : all) put_aside_or_ask(std::move(shopped));
        ask_shops();
        check_most_left();
        answer_of(buy_packs(question_));
        warn_of_missing();
        warn_of_packs();
        return std::move(answer_);
    }

private:
    /// Packs at prices in another currency are as good as none.
    void take_currency(std::vector<ShoppedIngredient>& all) {
        std::vector<PricedIn> priced;
        for (const ShoppedIngredient& shopped : all) add_currencies(priced, shopped.ingredient);
        answer_.currency = answer_currency(priced, request_.usual_currency);
        for (const ShopRequest::Delivery& delivery : request_.deliveries) check_charge(delivery);
        for (ShoppedIngredient& shopped : all) shopped.packs = packs_on_offer(shopped.ingredient, answer_.currency);
    }

    void check_charge(const ShopRequest::Delivery& delivery) {
        const Currency& its = delivery.charge.currency();
        if (!answer_.currency) answer_.currency = &its;
        if (its == *answer_.currency) return;
        const std::string code(answer_.currency->code);
        throw InputError("mixed-currencies",
                         "the delivery of " + delivery.shop + " is in " + std::string(its.code) +
                             " and the packs are in " + code + ", and the two do not add up",
                         "say in " + code + " what it charges");
    }

    [[nodiscard]] bool sold_where_one_goes(const Pack& pack) const {
        const auto& at = request_.at;
        return at.empty() || pack.shop.empty() || std::find(at.begin(), at.end(), pack.shop) != at.end();
    }

    /// Of what the usual shop sells, its packs alone, and those that are sold anywhere.
    void leave_where_one_buys(std::vector<PackOnOffer>& packs) const {
        if (!request_.rather_at) return;
        const auto there = [&](const PackOnOffer& offer) { return offer.pack.shop == *request_.rather_at; };
        if (std::none_of(packs.begin(), packs.end(), there)) return;
        std::erase_if(packs, [&](const PackOnOffer& offer) { return !there(offer) && !offer.pack.shop.empty(); });
    }

    [[nodiscard]] int place_of(const std::string& shop) const {
        const auto found = std::find(shops_.begin(), shops_.end(), shop);
        return found == shops_.end() ? -1 : static_cast<int>(found - shops_.begin());
    }

    /// Whether it is sold where one goes comes before the currency: what is not would not be there after a conversion.
    NotOnSale::Why why_missing(const ShoppedIngredient& shopped) {
        Ingredient there = shopped.ingredient;
        std::erase_if(there.packs, [&](const Pack& pack) { return !sold_where_one_goes(pack); });
        if (auto elsewhere = priced_elsewhere(there, answer_.currency)) {
            elsewhere_.push_back(*std::move(elsewhere));
            return NotOnSale::Why::other_currency;
        }
        return packs_on_offer(shopped.ingredient).empty() ? NotOnSale::Why::no_price : NotOnSale::Why::not_sold_there;
    }

    /// What nobody sells is asked for only as far as the shed reaches.
    void put_aside_or_ask(ShoppedIngredient shopped) {
        PackNeed need = pack_need(shopped, answer_.sessions, stock_);
        std::erase_if(need.packs, [&](const PackOnOffer& offer) { return !sold_where_one_goes(offer.pack); });
        leave_where_one_buys(need.packs);
        for (PackOnOffer& offer : need.packs) offer.shop = place_of(offer.pack.shop);
        if (const PackCalendar calendar(need); need.packs.empty() && !calendar.stock_reaches()) {
            const auto why = why_missing(shopped);
            const Mass from_stock = mass_of_milligrams(calendar.without_buying().from_stock);
            answer_.missing.push_back({shopped.ingredient.name, shopped.mass(), why, from_stock,
                                       shopped.mass() - from_stock, calendar.stock().session});
            return;
        }
        ingredients_.push_back(std::move(shopped));
        question_.needs.push_back(std::move(need));
    }

    [[nodiscard]] std::optional<Money> charge_of(const std::string& shop) const {
        std::optional<Money> charge;
        for (const ShopRequest::Delivery& delivery : request_.deliveries)
            if (delivery.shop == shop) charge = delivery.charge;
        return charge;
    }

    void ask_shops() {
        for (const std::string& shop : shops_)
            question_.shops.push_back({shop, charge_of(shop).value_or(Money{}).minor()});
        question_.one_shop = request_.trips == ShopRequest::Trips::one_shop;
    }

    /// The least that any packs leave over, in whole grams, where it is sure.
    [[nodiscard]] std::optional<std::int64_t> least_left(std::size_t i) const {
        PackNeed least = question_.needs[i];
        least.most_left_over.reset();
        for (PackOnOffer& pack : least.packs) pack.price_minor = 0;
        std::int64_t ways = most_ways_tried / static_cast<std::int64_t>(ingredients_.size());
        const std::optional<PackPlan> plan = cheapest_packs_over(least, ways);
        if (!plan->least_left) return std::nullopt;
        return (plan->bought - PackCalendar(least).to_buy()) / 1000;
    }

    /// Every ingredient of which no packs leave as little as is wanted, to the gram, with the least that they can
    /// leave.
    void check_most_left() {
        if (!request_.most_left_over) return;
        const auto most = static_cast<std::int64_t>(request_.most_left_over->in(gram));
        std::vector<std::string> too_much;
        for (std::size_t i = 0; i < ingredients_.size(); ++i) {
            question_.needs[i].most_left_over = 1000 * most + 999;
            const auto left = least_left(i);
            if (left > most) too_much.push_back(std::to_string(*left) + " g of " + ingredients_[i].ingredient.name);
        }
        if (too_much.empty()) return;
        const std::string message = "whole packs leave more than that over, at the least " + listed(too_much);
        throw Error(FaultClass::answer_is_no,
                    {"too-much-left", message,
                     request_.rather_at ? "allow more with --most-left, or say with --at where else than at " +
                                              *request_.rather_at + " to buy"
                                        : std::string("allow more with --most-left, or leave it out")});
    }

    [[nodiscard]] Error no_one_shop() const {
        std::string message = "no one shop sells all of it";
        for (std::size_t shop = 0; shop < shops_.size(); ++shop) {
            std::vector<std::string> lacks;
            for (std::size_t i = 0; i < ingredients_.size(); ++i)
                if (const auto& packs = question_.needs[i].packs;
                    std::none_of(packs.begin(), packs.end(), [&](const PackOnOffer& pack) {
                        return pack.shop < 0 || pack.shop == static_cast<int>(shop);
                    }))
                    lacks.push_back(ingredients_[i].ingredient.name);
            message += (shop == 0 ? ": " : "; ") + shops_[shop] + " lacks " + listed(lacks);
        }
        return {FaultClass::answer_is_no, {"no-one-shop", message, "leave out --one-shop"}};
    }

    void answer_of(const std::optional<PackAnswer>& found) {
        if (!found) throw no_one_shop();
        answer_.delivery_minor = found->delivery_minor;
        answer_.total_minor = found->total_minor;
        answer_.at_least_minor = found->at_least_minor;
        answer_.least_left = found->least_left;
        for (std::size_t i = 0; i < ingredients_.size(); ++i) add(ingredients_[i], question_.needs[i], found->plans[i]);
        sort_stably(answer_.packs.begin(), answer_.packs.end(), [](const PackBought& a, const PackBought& b) {
            return std::tie(a.pack.shop, a.session) < std::tie(b.pack.shop, b.session);
        });
        for (const PackBought& bought : answer_.packs) add_to_shop(bought);
    }

    void add(const ShoppedIngredient& shopped, const PackNeed& need, const PackPlan& plan) {
        const std::int64_t needed = std::accumulate(need.milligrams.begin(), need.milligrams.end(), std::int64_t{0});
        answer_.lines.push_back({shopped.ingredient.name, mass_of_milligrams(needed),
                                 mass_of_milligrams(plan.from_stock), mass_of_milligrams(plan.bought),
                                 mass_of_milligrams(plan.left_over), mass_of_milligrams(plan.past_best),
                                 shopped.ingredient.keeps});
        answer_.packs.insert(answer_.packs.end(), plan.purchases.begin(), plan.purchases.end());
    }

    void add_to_shop(const PackBought& bought) {
        auto& shops = answer_.shops;
        if (shops.empty() || shops.back().shop != bought.pack.shop)
            shops.push_back({bought.pack.shop, Money(0, *answer_.currency), charge_of(bought.pack.shop)});
        shops.back().packs += bought.total();
    }

    void warn_of_missing() {
        std::vector<std::string> unpriced, elsewhere;
        for (const NotOnSale& missing : answer_.missing) {
            if (missing.why == NotOnSale::Why::no_price) unpriced.push_back(missing.name);
            if (missing.why == NotOnSale::Why::not_sold_there) elsewhere.push_back(missing.name);
        }
        if (auto warning = no_price_warning(unpriced, "the sum")) answer_.warnings.push_back(*std::move(warning));
        if (!elsewhere_.empty())
            answer_.warnings.push_back(
                other_currency_warning(elsewhere_, *answer_.currency, leaves_out("the sum", elsewhere_.size())));
        if (!elsewhere.empty())
            answer_.warnings.push_back({"not-sold-there",
                                        "the shops that you go to do not sell " + listed(elsewhere) +
                                            ", so the sum leaves " + (elsewhere.size() == 1 ? "it" : "them") + " out",
                                        true});
    }

    void warn_of_packs() {
        std::vector<std::string> stale, large;
        for (const PackBought& bought : answer_.packs) {
            const std::string dated = bought.name + " (" + date_or_blank(bought.pack.on) + ")";
            if (is_stale(bought.pack, request_.today) && std::find(stale.begin(), stale.end(), dated) == stale.end())
                stale.push_back(dated);
        }
        if (auto warning = stale_warning(stale)) answer_.warnings.push_back(*std::move(warning));
        for (const ShopLine& line : answer_.lines)
            if (line.bought > Mass{} && left_of_packs(line) > line.need) large.push_back(line.name);
        if (!large.empty())
            answer_.warnings.push_back(
                {"more-left-than-used", "the packs are so large that more is left over than used of " + listed(large)});
    }

    const StockOnHand& stock_;
    ShopRequest request_;  ///< its shops named in full
    ShopAnswer answer_;
    std::vector<std::string> shops_;
    std::vector<ShoppedIngredient> ingredients_;  // those that can be had
    PackQuestion question_;
    std::vector<PricedElsewhere> elsewhere_;  // of what is missing
};

}  // namespace

ShopAnswer shop_sessions(std::vector<SessionNeed> sessions, const StockOnHand& stock, const ShopRequest& request) {
    return Shopper(std::move(sessions), stock, request).run();
}

}  // namespace baitwright
