// Prices in several currencies: an answer is in one of them, and says what it leaves out.
#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <set>

#include "answers/money/compare_strategies.h"
#include "answers/money/cost_strategy.h"
#include "answers/money/shop_sessions.h"
#include "answers/sessions.h"
#include "day_of.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

const Currency& gbp = currency_named("GBP");
const Currency& eur = currency_named("EUR");

Pack euro_pack(double grams, std::int64_t minor, const Currency& currency, const char* on = "2026-03-01") {
    return {grams * gram, Money(minor, currency), day_of(on), "the mill"};
}

void sell(MemoryShelf& shelf, const std::string& name, std::vector<Pack> packs) {
    Ingredient ingredient = bank().ingredient(name);
    ingredient.packs = std::move(packs);
    shelf.put(ingredient);
}

/// So many grams of each an hour, for five hours, nothing to spare.
Strategy fed_by_the_hour(const std::vector<std::string>& names, double grams) {
    std::vector<Feed> feeds;
    for (const std::string& name : names)
        feeds.push_back({{EveryTime{1.0 * hour}, {}, {}}, {{name}}, FeedForm::loose, grams * gram, 1, {}});
    Strategy strategy = session(feeds);
    strategy.name = names.front();
    return strategy;
}

CostRequest in_usual(const Currency* usual) {
    CostRequest request;
    request.on = parse_date("2026-11-25");
    request.ranges = CostRequest::Ranges::left_out;
    request.usual_currency = usual;
    return request;
}

StrategyCost cost_in(const Shelf& shelf, const Strategy& strategy, const Currency* usual = nullptr,
                     const StockOnHand& stock = {}) {
    return cost_strategy(shelf, strategy, stock, in_usual(usual));
}

const Warning* warning_of(const std::vector<Warning>& warnings, const std::string& code) {
    for (const Warning& warning : warnings)
        if (warning.code == code) return &warning;
    return nullptr;
}

using Names = std::vector<std::string>;

}  // namespace

TEST_CASE("a session is costed in the currency that most of it is priced in, and says what that leaves out") {
    MemoryShelf shelf(&bank());
    sell(shelf, "casters", {euro_pack(1000, 390, eur)});
    sell(shelf, "sweetcorn", {euro_pack(1000, 115, gbp)});
    sell(shelf, "cooked hemp", {euro_pack(1000, 250, gbp)});
    const StrategyCost cost = cost_in(shelf, fed_by_the_hour({"casters", "sweetcorn", "cooked hemp"}, 100));
    REQUIRE(cost.currency);
    CHECK(*cost.currency == gbp);
    CHECK(cost.outlay_minor == 365);
    CHECK(cost.unpriced == Names{"casters"});
    const Warning* warning = warning_of(cost.warnings, "other-currency");
    REQUIRE(warning);
    CHECK(warning->answer_is_no);
    CHECK(warning->message ==
          "no price in GBP: casters (€3.90), so the cost leaves it out; put all prices into one currency with "
          "'baitwright price convert --to GBP --at RATE'");
    CHECK_FALSE(warning_of(cost.warnings, "no-price"));
}

TEST_CASE("what a person always uses is the currency, where anything is priced in it") {
    MemoryShelf shelf(&bank());
    sell(shelf, "casters", {euro_pack(1000, 390, eur)});
    sell(shelf, "sweetcorn", {euro_pack(1000, 115, gbp)});
    sell(shelf, "cooked hemp", {euro_pack(1000, 250, gbp)});
    const Strategy strategy = fed_by_the_hour({"casters", "sweetcorn", "cooked hemp"}, 100);
    const StrategyCost in_euros = cost_in(shelf, strategy, &eur);
    CHECK(*in_euros.currency == eur);
    CHECK(in_euros.outlay_minor == 390);
    CHECK(in_euros.unpriced == Names{"sweetcorn", "cooked hemp"});
    CHECK(*cost_in(shelf, strategy, &currency_named("CHF")).currency == gbp);
}

TEST_CASE("where as much is priced in either currency, the first decides") {
    MemoryShelf shelf(&bank());
    sell(shelf, "casters", {euro_pack(1000, 390, eur)});
    sell(shelf, "sweetcorn", {euro_pack(1000, 115, gbp)});
    CHECK(*cost_in(shelf, fed_by_the_hour({"casters", "sweetcorn"}, 100)).currency == eur);
}

TEST_CASE("of packs in both currencies only those in the answer's are bought, and none is left out") {
    MemoryShelf shelf(&bank());
    // On different days at one shop: the newer one must not hide the one that can be reckoned with.
    sell(shelf, "casters", {euro_pack(1000, 500, gbp), euro_pack(1000, 1, eur, "2026-06-01")});
    sell(shelf, "sweetcorn", {euro_pack(1000, 115, gbp)});
    const StrategyCost cost = cost_in(shelf, fed_by_the_hour({"casters", "sweetcorn"}, 100));
    CHECK(cost.complete());
    CHECK(cost.outlay_minor == 615);
    CHECK_FALSE(warning_of(cost.warnings, "other-currency"));
    CHECK(cost_in(shelf, fed_by_the_hour({"casters"}, 100), &eur).outlay_minor == 1);
}

TEST_CASE("what the shed holds and was paid for in another currency counts at the price of now, and says so") {
    MemoryShelf shelf(&bank());
    sell(shelf, "sweetcorn", {euro_pack(1000, 200, eur)});
    StockOnHand stock;
    stock.put("sweetcorn", {500.0 * gram, std::nullopt, Money(80, gbp)});
    const Strategy strategy = fed_by_the_hour({"sweetcorn"}, 100);
    for (const Currency* usual : {&gbp, &eur}) {  // the packs decide
        const StrategyCost cost = cost_in(shelf, strategy, usual, stock);
        CHECK(*cost.currency == eur);
        CHECK(cost.complete());
        CHECK(cost.used_minor == 100);
        const Warning* warning = warning_of(cost.warnings, "paid-in-other-currency");
        REQUIRE(warning);
        CHECK_FALSE(warning->answer_is_no);
        CHECK_THAT(warning->message, Catch::Contains("sweetcorn") && Catch::Contains("EUR"));
    }
    StockOnHand given;
    given.put("sweetcorn", {500.0 * gram, std::nullopt, Money(0, gbp)});
    const StrategyCost free = cost_in(shelf, strategy, nullptr, given);
    CHECK(free.used_minor == 0);
    CHECK_FALSE(warning_of(free.warnings, "paid-in-other-currency"));
}

TEST_CASE("stock without a price of now is left out where it was paid for in another currency") {
    MemoryShelf shelf(&bank());
    sell(shelf, "sweetcorn", {euro_pack(1000, 200, eur)});
    sell(shelf, "casters", {});
    StockOnHand stock;
    stock.put("casters", {500.0 * gram, std::nullopt, Money(80, gbp)});
    const StrategyCost cost = cost_in(shelf, fed_by_the_hour({"sweetcorn", "casters"}, 100), nullptr, stock);
    CHECK(cost.unpriced == Names{"casters"});
    REQUIRE(cost.elsewhere.size() == 1);
    CHECK(cost.elsewhere.front().price == Money(80, gbp));
}

TEST_CASE("strategies are compared in one currency, which all that they take decides") {
    MemoryShelf shelf(&bank());
    sell(shelf, "casters", {euro_pack(1000, 390, eur)});
    sell(shelf, "sweetcorn", {euro_pack(1000, 115, gbp)});
    sell(shelf, "cooked hemp", {euro_pack(1000, 250, gbp)});
    const std::vector<Strategy> strategies{fed_by_the_hour({"casters"}, 100),
                                           fed_by_the_hour({"sweetcorn", "cooked hemp"}, 100)};
    const auto compared = [&](const Currency* usual) {
        const auto cost_of = [&](std::size_t i, const Currency* in) {
            CostRequest request = in_usual(usual);
            request.currency = in;
            return cost_strategy(shelf, strategies[i], {}, request);
        };
        return compare_strategies(costs_in_one_currency(strategies.size(), cost_of, usual));
    };
    const StrategyComparison in_pounds = compared(nullptr), in_euros = compared(&eur);
    CHECK(*in_pounds.currency == gbp);
    CHECK(in_pounds.cheapest_used == 1);
    CHECK(in_pounds.costs[0].currency == nullptr);
    CHECK(in_pounds.costs[0].unpriced == Names{"casters"});
    CHECK(warning_of(in_pounds.costs[0].warnings, "other-currency"));
    CHECK(*in_euros.currency == eur);
    CHECK(in_euros.cheapest_used == 0);
    CHECK(in_euros.costs[1].unpriced == Names{"sweetcorn", "cooked hemp"});
}

TEST_CASE("whatever the currencies, the sum is that of the parts priced in its own, and the rest is named") {
    CHECK(rc::check([] {
        const std::vector<std::string> names{"casters", "sweetcorn", "cooked hemp", "brown crumb"};
        MemoryShelf shelf(&bank());
        std::map<std::string, std::set<std::string>> codes;
        for (const std::string& name : names) {
            std::vector<Pack> packs;
            for (const Currency* currency : {&gbp, &eur}) {
                if (*rc::gen::inRange(0, 2) == 0) continue;
                packs.push_back(euro_pack(*rc::gen::inRange(100, 3000), *rc::gen::inRange(1, 900), *currency));
                codes[name].insert(std::string(currency->code));
            }
            sell(shelf, name, packs);
        }
        const Currency* usual = *rc::gen::element<const Currency*>(nullptr, &gbp, &eur);
        const StrategyCost cost = cost_in(shelf, fed_by_the_hour(names, *rc::gen::inRange(10, 400)), usual);
        std::int64_t used = 0, outlay = 0, packs = 0;
        for (const CostLine& line : cost.lines) {
            const bool priced = cost.currency && codes[line.name].count(std::string(cost.currency->code)) > 0;
            RC_ASSERT(line.used.has_value() == priced);
            if (!priced) continue;
            RC_ASSERT(line.used->currency() == *cost.currency);
            used += line.used->minor();
            outlay += line.outlay->minor();
        }
        for (const PackBought& bought : cost.packs) {
            RC_ASSERT(bought.pack.price->currency() == *cost.currency);
            packs += bought.total().minor();
        }
        RC_ASSERT(used == cost.used_minor);
        RC_ASSERT(outlay == cost.outlay_minor);
        RC_ASSERT(packs == cost.outlay_minor);
        std::size_t elsewhere = 0;
        for (const auto& [name, of] : codes)
            if (cost.currency && !of.empty() && of.count(std::string(cost.currency->code)) == 0) ++elsewhere;
        RC_ASSERT(cost.elsewhere.size() == elsewhere);
    }));
}

TEST_CASE("what is sold where one goes, but in another currency, is not called unsold there") {
    const auto sold = [](double grams, std::int64_t minor, const Currency& currency, const char* shop) {
        Pack pack = euro_pack(grams, minor, currency);
        pack.shop = shop;
        return pack;
    };
    const auto needed = [](const std::string& name, std::vector<Pack> packs) {
        Ingredient ingredient = bank().ingredient(name);
        ingredient.packs = std::move(packs);
        return IngredientNeed{ingredient, 300.0 * gram, {}};
    };
    const Pack in_euros = sold(25000, 1800, eur, "de molen");
    const SessionNeed session{"far bank",
                              parse_date("2026-11-28"),
                              {needed("brown crumb", {sold(1000, 200, gbp, "the mill"), in_euros}),
                               needed("casters", {sold(320, 390, gbp, "the village shop"), in_euros}),
                               needed("sweetcorn", {sold(340, 115, eur, "the mill")})}};
    ShopRequest request;
    request.today = session.on;
    request.at = {"the mill"};
    request.usual_currency = &eur;
    const ShopAnswer answer = shop_sessions({session}, StockOnHand{}, request);
    CHECK(answer.total_minor == 115);
    REQUIRE(answer.missing.size() == 2);
    CHECK(answer.missing[0].name == "brown crumb");
    CHECK(answer.missing[0].why == NotOnSale::Why::other_currency);
    CHECK(answer.missing[1].name == "casters");
    CHECK(answer.missing[1].why == NotOnSale::Why::not_sold_there);
}
