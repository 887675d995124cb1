#include "answers/money/shop_sessions.h"

#include <algorithm>
#include <numeric>
#include <set>

#include "answers/money/buy_packs.h"
#include "answers/money/one_currency.h"
#include "answers/money/shop_needs.h"
#include "answers/money/stock_reach.h"
#include "answers/shared/stale_prices.h"
#include "answers/shared/stock_answer.h"
#include "bait/price_book.h"
#include "bait/pricing.h"
#include "quantities/fault.h"
#include "quantities/listed.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

Mass grams(std::int64_t count) {
    return static_cast<double>(count) * gram;
}

std::vector<std::string> shops_of(const std::vector<ShoppedIngredient>& ingredients) {
    std::set<std::string> shops;
    for (const ShoppedIngredient& shopped : ingredients)
        for (const Pack& pack : shopped.packs)
            if (!pack.shop.empty()) shops.insert(pack.shop);
    return {shops.begin(), shops.end()};
}

void check_shop(const std::string& shop, const std::vector<std::string>& shops) {
    if (std::find(shops.begin(), shops.end(), shop) != shops.end()) return;
    std::string hint = did_you_mean(shop, shops);
    if (hint.empty())
        hint = shops.empty() ? "no price of what is needed names a shop"
                             : "shops that sell something of it: " + listed(shops);
    throw NotFound("unknown-shop", "'" + shop + "' sells nothing of what is needed", std::move(hint));
}

/// Builds the list out of what the programme over packs found.
class Shopper {
public:
    Shopper(std::vector<SessionNeed> sessions, const StockOnHand& stock, const ShopRequest& request)
        : stock_(stock), request_(request) {
        answer_.sessions = std::move(sessions);
        std::stable_sort(answer_.sessions.begin(), answer_.sessions.end(),
                         [](const SessionNeed& a, const SessionNeed& b) { return a.on < b.on; });
    }

    ShopAnswer run() {
        std::vector<ShoppedIngredient> all = shopped_ingredients(answer_.sessions, request_.at);
        shops_ = shops_of(all);
        for (const std::string& shop : request_.at) check_shop(shop, shops_);
        for (const ShopRequest::Delivery& delivery : request_.deliveries) check_shop(delivery.shop, shops_);
        take_currency(all);
        for (ShoppedIngredient& shopped : all) put_aside_or_ask(std::move(shopped));
        ask_shops();
        check_most_left();
        answer_of(buy_packs(question_));
        warn();
        return std::move(answer_);
    }

private:
    void take_currency(const std::vector<ShoppedIngredient>& all) {
        std::vector<PricedIn> priced;
        for (const ShoppedIngredient& shopped : all)
            for (const Pack& pack : shopped.packs) priced.push_back({shopped.ingredient.name, &pack.price->currency()});
        for (const ShopRequest::Delivery& delivery : request_.deliveries)
            priced.push_back({"delivery of " + delivery.shop, &delivery.charge.currency()});
        answer_.currency = one_currency(priced);
    }

    /// What nobody sells is asked for only as far as the shed reaches.
    void put_aside_or_ask(ShoppedIngredient shopped) {
        PackNeed need = pack_need(shopped, answer_.sessions, stock_, shops_);
        if (shopped.sold.empty() && !cheapest_packs_over(need)) {
            answer_.missing.push_back(not_on_sale(shopped, need));
            return;
        }
        ingredients_.push_back(std::move(shopped));
        question_.needs.push_back(std::move(need));
    }

    static NotOnSale not_on_sale(const ShoppedIngredient& shopped, const PackNeed& need) {
        const double needed = std::accumulate(shopped.grams.begin(), shopped.grams.end(), 0.0);
        const StockReach reach(need);
        const auto why = shopped.packs.empty() ? NotOnSale::Why::no_price : NotOnSale::Why::not_sold_there;
        const Mass from_stock = grams(reach.used());
        return {shopped.ingredient.name,
                needed * gram,
                why,
                from_stock,
                needed * gram - from_stock,
                static_cast<std::size_t>(reach.falls_short_at())};
    }

    void ask_shops() {
        for (const std::string& shop : shops_) {
            std::int64_t charge = 0;
            for (const ShopRequest::Delivery& delivery : request_.deliveries)
                if (delivery.shop == shop) charge = delivery.charge.minor();
            question_.shops.push_back({shop, charge});
        }
        question_.one_shop = request_.trips == ShopRequest::Trips::one_shop;
    }

    struct LeastLeft {
        std::int64_t grams;
        bool sure;  ///< no packs leave less
    };
    [[nodiscard]] LeastLeft least_left(std::size_t i) const {
        PackNeed least = question_.needs[i];
        least.most_left_over.reset();
        for (PackOnSale& pack : least.packs) pack.price_minor = 0;
        std::int64_t ways = most_ways_tried / static_cast<std::int64_t>(ingredients_.size());
        const std::optional<PackPlan> plan = cheapest_packs_over(least, ways);
        const std::int64_t need = std::accumulate(least.grams.begin(), least.grams.end(), std::int64_t{0});
        return {plan->from_stock + plan->bought - need, plan->least_left};
    }

    /// Every ingredient of which no packs leave as little as is wanted, with the least that they can leave.
    void check_most_left() {
        if (!request_.most_left_over) return;
        const auto most = static_cast<std::int64_t>(request_.most_left_over->in(gram));
        std::vector<std::string> too_much;
        for (std::size_t i = 0; i < ingredients_.size(); ++i) {
            question_.needs[i].most_left_over = most;
            const auto [left, sure] = least_left(i);
            if (left > most && sure)
                too_much.push_back(std::to_string(left) + " g of " + ingredients_[i].ingredient.name);
        }
        if (too_much.empty()) return;
        throw Error(FaultClass::answer_is_no,
                    {"too-much-left",
                     "whole packs leave more than that over, at the least " + listed(too_much),
                     "allow more with --most-left, or leave it out",
                     {},
                     0,
                     0,
                     {}});
    }

    [[nodiscard]] Error no_one_shop() const {
        std::string message = "no one shop sells all of it";
        for (std::size_t shop = 0; shop < shops_.size(); ++shop) {
            std::vector<std::string> lacks;
            for (const ShoppedIngredient& shopped : ingredients_)
                if (std::none_of(shopped.sold.begin(), shopped.sold.end(),
                                 [&](const Pack& pack) { return pack.shop.empty() || pack.shop == shops_[shop]; }))
                    lacks.push_back(shopped.ingredient.name);
            message += (shop == 0 ? ": " : "; ") + shops_[shop] + " lacks " + listed(lacks);
        }
        return {FaultClass::answer_is_no, {"no-one-shop", message, "leave out --one-shop", {}, 0, 0, {}}};
    }

    void answer_of(const std::optional<PackAnswer>& found) {
        if (!found) throw no_one_shop();
        answer_.delivery_minor = found->delivery_minor;
        answer_.total_minor = found->total_minor;
        answer_.at_least_minor = found->at_least_minor;
        answer_.least_left = found->least_left;
        for (std::size_t i = 0; i < ingredients_.size(); ++i) add(ingredients_[i], question_.needs[i], found->plans[i]);
        std::stable_sort(answer_.packs.begin(), answer_.packs.end(), [](const PackToBuy& a, const PackToBuy& b) {
            if (a.pack.shop != b.pack.shop) return a.pack.shop < b.pack.shop;
            return a.session < b.session;
        });
        for (const PackToBuy& pack : answer_.packs) add_to_shop(pack);
    }

    void add(const ShoppedIngredient& shopped, const PackNeed& need, const PackPlan& plan) {
        std::int64_t needed = 0;
        for (const std::int64_t each : need.grams) needed += each;
        answer_.lines.push_back({shopped.ingredient.name, grams(needed), grams(plan.from_stock), grams(plan.bought),
                                 grams(plan.left_over), grams(plan.past_best), shopped.ingredient.keeps});
        for (const PackPurchase& purchase : plan.purchases) {
            const Pack& pack = shopped.sold[purchase.pack];
            answer_.packs.push_back({{shopped.ingredient.name, pack, mass_in(pack, shopped.ingredient), purchase.count,
                                      Money(purchase.count * pack.price->minor(), *answer_.currency)},
                                     static_cast<std::size_t>(purchase.session)});
        }
    }

    void add_to_shop(const PackToBuy& pack) {
        auto& shops = answer_.shops;
        if (shops.empty() || shops.back().shop != pack.pack.shop) {
            shops.push_back({pack.pack.shop, Money(0, *answer_.currency), std::nullopt});
            for (const ShopRequest::Delivery& delivery : request_.deliveries)
                if (delivery.shop == pack.pack.shop) shops.back().delivery = delivery.charge;
        }
        shops.back().packs += pack.total;
    }

    void warn() {
        std::vector<std::string> unpriced, elsewhere;
        for (const NotOnSale& missing : answer_.missing)
            (missing.why == NotOnSale::Why::no_price ? unpriced : elsewhere).push_back(missing.name);
        if (auto warning = no_price_warning(unpriced, "the sum")) answer_.warnings.push_back(*std::move(warning));
        if (!elsewhere.empty())
            answer_.warnings.push_back({"not-sold-there",
                                        "the shops that you go to do not sell " + listed(elsewhere) +
                                            ", so the sum leaves " + (elsewhere.size() == 1 ? "it" : "them") + " out",
                                        true});
        std::vector<std::string> stale, large;
        for (const PackToBuy& bought : answer_.packs) {
            const std::string dated = bought.name + " (" + date_or_blank(bought.pack.on) + ")";
            if (is_stale(bought.pack, request_.today) && std::find(stale.begin(), stale.end(), dated) == stale.end())
                stale.push_back(dated);
        }
        if (auto warning = stale_warning(stale)) answer_.warnings.push_back(*std::move(warning));
        for (const ShopLine& line : answer_.lines)
            if (line.bought > Mass{} && line.left_over > line.need) large.push_back(line.name);
        if (!large.empty())
            answer_.warnings.push_back(
                {"more-left-than-used", "the packs are so large that more is left over than used of " + listed(large)});
    }

    const StockOnHand& stock_;
    const ShopRequest& request_;
    ShopAnswer answer_;
    std::vector<std::string> shops_;
    std::vector<ShoppedIngredient> ingredients_;  // those that can be had
    PackQuestion question_;
};

}  // namespace

void add_sessions(std::vector<SessionNeed>& sessions, const UnrolledStrategy& unrolled, int times, SessionDays& days) {
    for (int time = 0; time < times; ++time) {
        sessions.push_back({unrolled.name, days.first, unrolled.totals});
        days.first += std::chrono::days{days.gap};
    }
}

ShopAnswer shop_sessions(std::vector<SessionNeed> sessions, const StockOnHand& stock, const ShopRequest& request) {
    return Shopper(std::move(sessions), stock, request).run();
}

}  // namespace baitwright
