#include "answers/money/cost_strategy.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "answers/money/compare_strategies.h"
#include "answers/sessions.h"
#include "answers/strategy/named_in_strategy.h"
#include "day_of.h"
#include "quantities/fault_of.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

Ingredient with_packs(const std::string& name, std::vector<Pack> packs, const Shelf& from = bank()) {
    Ingredient ingredient = from.ingredient(name);
    ingredient.packs = std::move(packs);
    return ingredient;
}

Pack pack(double grams, std::int64_t pence, const char* on = "2026-03-01", const char* currency = "GBP") {
    return {grams * gram, Money(pence, currency_named(currency)), day_of(on), "the village shop"};
}

/// A shelf with the prices of the example that is worked by hand.
class PricedBank : public MemoryShelf {
public:
    PricedBank() : MemoryShelf(&bank()) {
        put(with_packs("fishmeal pellet 4 mm", {pack(900, 300), pack(5000, 1260)}));
        put(with_packs("casters", {pack(320, 390)}));
        put(with_packs("sweetcorn", {pack(340, 115)}));
        put(with_packs("cooked hemp", {pack(1000, 250)}));
    }
};

const Shelf& priced_bank() {
    static const PricedBank shelf;
    return shelf;
}

Feed loose(const std::string& of, double grams, double every_minutes) {
    return {{EveryTime{every_minutes * minute}, {}, {}}, {{of}}, FeedForm::loose, grams * gram, 1, {}};
}

/// Four cups of 250 ml of pellets at 640 g/l, and 20 g of casters an hour, a tenth to spare: 704 g and 110 g.
Strategy cups_of_pellets() {
    Strategy strategy = session({cups("fishmeal pellet 4 mm", 250, 4), loose("casters", 20, 60)}, 0.1);
    strategy.name = "cups of pellets";
    return strategy;
}

/// 70 g of sweetcorn every half an hour and 35 g of hemp every 75 min, nothing to spare: 700 g and 140 g.
Strategy corn_and_hemp() {
    Strategy strategy = session({loose("sweetcorn", 70, 30), loose("cooked hemp", 35, 75)});
    strategy.name = "corn and hemp";
    return strategy;
}

CostRequest asked_today() {
    CostRequest request;
    request.on = parse_date("2026-11-25");
    return request;
}

CostRequest plain() {
    CostRequest request = asked_today();
    request.ranges = CostRequest::Ranges::left_out;
    return request;
}

struct Contender {
    const Shelf* shelf;
    Strategy strategy;
    int times = 1;
};

StrategyComparison compare_strategies(const std::vector<Contender>& contenders, const StockOnHand& stock,
                                      CostRequest request) {
    std::set<std::string> fed;
    for (const Contender& contender : contenders) fed.merge(names_in(contender.strategy, *contender.shelf));
    request.what_if = what_if_of_all(request.what_if, fed);
    const auto cost_of = [&](std::size_t i, const Currency* in) {
        request.what_if.times = contenders[i].times;
        request.currency = in;
        return cost_strategy(*contenders[i].shelf, contenders[i].strategy, stock, request);
    };
    return compare_strategies(costs_in_one_currency(contenders.size(), cost_of, request.usual_currency));
}

StrategyCost cost_of(const Strategy& strategy, const Shelf& shelf = priced_bank(), const StockOnHand& stock = {}) {
    return cost_strategy(shelf, strategy, stock, plain());
}

const CostLine& line(const StrategyCost& cost, const std::string& name) {
    for (const CostLine& one_of : cost.lines)
        if (one_of.name == name) return one_of;
    throw std::logic_error("no such line");
}

bool warns(const StrategyCost& cost, const std::string& code) {
    return std::any_of(cost.warnings.begin(), cost.warnings.end(),
                       [&](const Warning& warning) { return warning.code == code; });
}

/// Every ingredient of the shelf with one to three packs at random prices.
void price_all(MemoryShelf& shelf) {
    for (const std::string& name : bank().ingredient_names()) {
        std::vector<Pack> packs;
        for (int i = *rc::gen::inRange(1, 4); i > 0; --i)
            packs.push_back(pack(draft::drawn(1, 50, 100), *rc::gen::inRange(0, 2000)));
        shelf.put(with_packs(name, packs));
    }
}

StockOnHand any_stock(const UnrolledStrategy& unrolled) {
    StockOnHand stock;
    for (const IngredientNeed& need : unrolled.totals)
        for (int i = *rc::gen::inRange(0, 3); i > 0; --i) {
            StockLot lot{draft::drawn(1, 2000, 1) * gram};
            if (*rc::gen::arbitrary<bool>()) lot.paid = Money(*rc::gen::inRange(0, 1000), currency_named("GBP"));
            stock.put(need.ingredient.name, lot);
        }
    return stock;
}

}  // namespace

// Pellets: 300p x 704/900 = 234.67p used; one pack of 900 g, £3.00, leaves 196 g.
// Casters: 390p x 110/320 = 134.06p used; one pack of 320 g, £3.90, leaves 210 g.
// In all 368.73p, so £3.69: the odd penny goes to the pellets, whose remainder is larger. To pay £6.90; £3.21 is left.
TEST_CASE("four cups of pellets and a few casters, reckoned penny by penny on paper") {
    const StrategyCost cost = cost_of(cups_of_pellets());
    CHECK(line(cost, "fishmeal pellet 4 mm").need.in(gram) == Approx(704));
    CHECK(line(cost, "casters").need.in(gram) == Approx(110));
    CHECK(line(cost, "fishmeal pellet 4 mm").used->minor() == 235);
    CHECK(line(cost, "casters").used->minor() == 134);
    CHECK(cost.used_minor == 369);
    CHECK(line(cost, "fishmeal pellet 4 mm").outlay->minor() == 300);
    CHECK(cost.outlay_minor == 690);
    CHECK(line(cost, "fishmeal pellet 4 mm").left_over.in(gram) == Approx(196));
    CHECK(line(cost, "casters").left_over.in(gram) == Approx(210));
    CHECK(line(cost, "casters").left_value->minor() == 256);
    CHECK(cost.left_over_minor == 321);
    REQUIRE(cost.packs.size() == 2);
    CHECK(cost.packs[0].count == 1);
    CHECK(cost.packs[0].mass.in(gram) == Approx(900));
    CHECK(cost.per_hour() == Approx(73.8));
    CHECK(cost.per_kilogram_wet().value() == Approx(369 / 0.814));
    CHECK(cost.unrolled.dry.in(gram) == Approx(814));
    CHECK(cost.complete());
}

// Corn: 115p x 700/340 = 236.76p; three packs, £3.45. Hemp: 250p x 140/1000 = 35p; one pack, £2.50.
// In all 271.76p, so £2.72; to pay £5.95. The cups cost 97p more: £2.35 for pellets, which the corn does without.
TEST_CASE("two strategies side by side, reckoned penny by penny on paper") {
    const std::vector<Contender> contenders{{&priced_bank(), cups_of_pellets(), 1},
                                            {&priced_bank(), corn_and_hemp(), 1}};
    const StrategyComparison found = compare_strategies(contenders, {}, plain());
    CHECK(found.costs[0].used_minor == 369);
    CHECK(found.costs[1].used_minor == 272);
    CHECK(line(found.costs[1], "sweetcorn").used->minor() == 237);
    CHECK(line(found.costs[1], "cooked hemp").used->minor() == 35);
    CHECK(found.costs[1].outlay_minor == 595);
    CHECK(found.costs[1].left_over_minor == 323);
    CHECK(found.cheapest_used == std::size_t{1});
    CHECK(found.cheapest_outlay == std::size_t{1});
    REQUIRE(found.differences.size() == 1);
    CHECK(found.differences[0].more_minor == 97);
    CHECK(found.differences[0].ingredient == "fishmeal pellet 4 mm");
    CHECK(found.differences[0].ingredient_more_minor == 235);
    CHECK(found.differences[0].here.in(gram) == Approx(704));
    CHECK(found.differences[0].there == Mass{});
}

// 300 g in the shed: 404 g to buy, one pack of 900 g all the same. What was paid for the 300 g is what they cost.
TEST_CASE("the shed comes first, at what was paid or at the price of today") {
    StockOnHand stock;
    stock.put("Fishmeal pellet 4 mm", {300.0 * gram});
    const StrategyCost unknown = cost_of(cups_of_pellets(), priced_bank(), stock);
    CHECK(line(unknown, "fishmeal pellet 4 mm").from_stock.in(gram) == Approx(300));
    CHECK(unknown.used_minor == 369);
    CHECK(unknown.from_stock_minor == 100);
    CHECK(unknown.outlay_minor == 690);
    CHECK(line(unknown, "fishmeal pellet 4 mm").left_over.in(gram) == Approx(496));
    StockOnHand paid;
    paid.put("fishmeal pellet 4 mm", {600.0 * gram, {}, Money(80, currency_named("GBP"))});
    paid.put("fishmeal pellet 4 mm", {200.0 * gram, day_of("2026-12-01"), Money(0, currency_named("GBP"))});
    const StrategyCost cheap = cost_of(cups_of_pellets(), priced_bank(), paid);
    CHECK(line(cheap, "fishmeal pellet 4 mm").used->minor() == 67);  // 200 g for nothing, then 504/600 of 80p
    CHECK(line(cheap, "fishmeal pellet 4 mm").outlay->minor() == 0);
    CHECK(cheap.outlay_minor == 390);
}

TEST_CASE("what has expired is not in the shed") {
    StockOnHand stock;
    stock.put("casters", {200.0 * gram, day_of("2026-11-24")});
    CHECK(cost_of(cups_of_pellets(), priced_bank(), stock).outlay_minor == 690);
    stock.put("casters", {200.0 * gram, day_of("2026-11-25")});
    CHECK(cost_of(cups_of_pellets(), priced_bank(), stock).outlay_minor == 300);
}

// 4.5 kg of pellets: five packs of 900 g are £15.00, one of 5 kg £12.60. Used by the gram it would be £15.00 too.
TEST_CASE("what is used never costs more than what is paid for it") {
    const Strategy much = session({loose("fishmeal pellet 4 mm", 900, 60)});
    const StrategyCost cost = cost_of(much);
    CHECK(cost.outlay_minor == 1260);
    CHECK(cost.used_minor == 1260);
    CHECK(cost.left_over_minor == 0);
    CHECK(line(cost, "fishmeal pellet 4 mm").left_over.in(gram) == Approx(500));
}

TEST_CASE("a price that is missing is named, and the sums are of the rest") {
    Strategy strategy = cups_of_pellets();
    strategy.feeds.push_back(loose("maggots", 10, 60));
    const StrategyCost cost = cost_of(strategy);
    CHECK_FALSE(cost.complete());
    CHECK(cost.unpriced == std::vector<std::string>{"maggots"});
    CHECK(cost.used_minor == 369);
    CHECK_FALSE(line(cost, "maggots").used.has_value());
    REQUIRE(warns(cost, "no-price"));
    const std::vector<Contender> contenders{{&priced_bank(), strategy, 1}, {&priced_bank(), cups_of_pellets(), 1}};
    CHECK(compare_strategies(contenders, {}, plain()).cheapest_used == std::size_t{1});  // for the whole of it is known
    const StrategyCost nothing = cost_of(session({loose("maggots", 10, 60)}));
    CHECK(nothing.currency == nullptr);
    CHECK(nothing.used_minor == 0);
}

TEST_CASE("a price more than a year old is warned of, by the calendar") {
    MemoryShelf shelf(&priced_bank());
    shelf.put(with_packs("casters", {pack(320, 390, "2025-11-25")}));
    CHECK_FALSE(warns(cost_of(cups_of_pellets(), shelf), "stale-price"));
    shelf.put(with_packs("casters", {pack(320, 390, "2025-11-24")}));
    REQUIRE(warns(cost_of(cups_of_pellets(), shelf), "stale-price"));
    shelf.put(with_packs("casters", {pack(320, 390, "")}));
    CHECK_FALSE(warns(cost_of(cups_of_pellets(), shelf), "stale-price"));
}

TEST_CASE("of one pack at one shop the newest price counts") {
    MemoryShelf shelf(&priced_bank());
    shelf.put(with_packs("casters", {pack(320, 390, "2026-09-01"), pack(320, 350, "2026-02-01")}));
    CHECK(cost_of(cups_of_pellets(), shelf).outlay_minor == 690);
    shelf.put(with_packs("casters", {pack(320, 390, "2026-09-01"), pack(320, 350, "2026-10-01")}));
    CHECK(cost_of(cups_of_pellets(), shelf).outlay_minor == 650);
}

TEST_CASE("a price that is tried out takes the place of all packs") {
    CostRequest request = plain();
    request.what_if.prices = {{"casters", pack(1000, 1000)}};
    const StrategyCost cost = cost_strategy(priced_bank(), cups_of_pellets(), {}, request);
    CHECK(line(cost, "casters").used->minor() == 110);
    CHECK(line(cost, "casters").outlay->minor() == 1000);
    request.what_if.prices = {{"sweetcorn", pack(1000, 1000)}};
    CHECK(fault_of([&] { (void)cost_strategy(priced_bank(), cups_of_pellets(), {}, request); }).code ==
          "not-in-strategy");
    const std::vector<Contender> contenders{{&priced_bank(), cups_of_pellets(), 1},
                                            {&priced_bank(), corn_and_hemp(), 1}};
    const StrategyComparison both = compare_strategies(contenders, {}, request);
    CHECK(both.costs[0].used_minor == 369);
    CHECK(line(both.costs[1], "sweetcorn").used->minor() == 700);
}

TEST_CASE("the front of a name stands for it where only one begins so") {
    MemoryShelf shelf(&bank());
    shelf.put(with_packs("fishmeal, brown", {pack(1000, 420)}));
    CostRequest request = plain();
    request.what_if.prices = {{"fishmeal", pack(1000, 400)}};
    const StrategyCost cost = cost_strategy(shelf, session({cups("fishmeal mix", 250, 4)}), {}, request);
    CHECK(line(cost, "fishmeal, brown").used->minor() ==
          std::llround(0.4 * line(cost, "fishmeal, brown").need.in(gram)));
}

TEST_CASE("without an ingredient in a comparison, those that never fed it are as they were") {
    CostRequest request = plain();
    request.what_if.without = {"casters"};
    const std::vector<Contender> contenders{{&priced_bank(), cups_of_pellets(), 1},
                                            {&priced_bank(), corn_and_hemp(), 1}};
    const StrategyComparison found = compare_strategies(contenders, {}, request);
    CHECK(found.costs[0].used_minor == 235);
    CHECK(found.costs[1].used_minor == 272);
    request.what_if.without = {"moon dust"};
    CHECK(fault_of([&] { (void)compare_strategies(contenders, {}, request); }).code == "not-in-strategy");
}

TEST_CASE("three sessions use three times as much; whole packs may do with less than three times the outlay") {
    CostRequest request = plain();
    request.what_if.times = 3;
    request.what_if.people = 2;
    const StrategyCost cost = cost_strategy(priced_bank(), corn_and_hemp(), {}, request);
    CHECK(cost.used_minor == 1631);              // 6 x 271.76 is 1630.59
    CHECK(cost.outlay_minor == 13 * 115 + 250);  // 4.2 kg of corn, 840 g of hemp
    CHECK(cost.per_session() == Approx(1631.0 / 3));
    CHECK(cost.per_angler() == Approx(1631.0 / 2));
    CHECK(cost.per_hour() == Approx(1631.0 / 15));
}

TEST_CASE("the order of strategies changes nothing but the order of the answers") {
    CHECK(rc::check([] {
        MemoryShelf shelf(&bank());
        const Strategy first = any_session(shelf);
        Strategy second = any_session(shelf);
        second.name = "near bank";
        price_all(shelf);
        const std::vector<Contender> there{{&shelf, first, 1}, {&shelf, second, 2}},
            back{{&shelf, second, 2}, {&shelf, first, 1}};
        const StrategyComparison a = compare_strategies(there, {}, plain()), b = compare_strategies(back, {}, plain());
        RC_ASSERT(a.costs[0].used_minor == b.costs[1].used_minor);
        RC_ASSERT(a.costs[1].outlay_minor == b.costs[0].outlay_minor);
        RC_ASSERT(a.costs[*a.cheapest_used].unrolled.name == b.costs[*b.cheapest_used].unrolled.name);
        RC_ASSERT(a.costs[*a.cheapest_outlay].unrolled.name == b.costs[*b.cheapest_outlay].unrolled.name);
        RC_ASSERT(a.differences.size() == b.differences.size());
        if (!a.differences.empty()) RC_ASSERT(a.differences[0].ingredient == b.differences[0].ingredient);
    }));
}

TEST_CASE("what is used is never more than the outlay and the stock that goes into it") {
    CHECK(rc::check([] {
        MemoryShelf shelf(&bank());
        const Strategy strategy = any_session(shelf);
        price_all(shelf);
        const StrategyCost cost = cost_of(strategy, shelf, any_stock(unroll_strategy(shelf, strategy)));
        RC_ASSERT(cost.complete());
        RC_ASSERT(cost.used_minor <= cost.outlay_minor + cost.from_stock_minor);
        RC_ASSERT(cost.used_minor + cost.left_over_minor == cost.outlay_minor + cost.from_stock_minor);
        for (const CostLine& one_of : cost.lines) {
            RC_ASSERT(one_of.left_value->minor() >= 0);
            RC_ASSERT(one_of.from_stock <= one_of.need);
        }
    }));
}

TEST_CASE("a longer session never uses less, nor costs less at the till, with whatever is in the shed") {
    CHECK(rc::check([] {
        MemoryShelf shelf(&bank());
        const Strategy strategy = any_session(shelf);
        price_all(shelf);
        const StockOnHand stock = any_stock(unroll_strategy(shelf, strategy));
        CostRequest request = plain();
        request.what_if.length = draft::drawn(1, 600, 1) * minute;
        const StrategyCost shorter = cost_strategy(shelf, strategy, stock, request);
        request.what_if.length = *request.what_if.length + draft::drawn(0, 600, 1) * minute;
        const StrategyCost longer = cost_strategy(shelf, strategy, stock, request);
        RC_ASSERT(longer.used_minor >= shorter.used_minor);
        RC_ASSERT(longer.outlay_minor >= shorter.outlay_minor);
    }));
}

namespace {

/// Five thousand random cases: the parts sum to the totals, which are rounded once.
void sums_hold(std::uint64_t state) {
    const std::vector<std::string> names{"maggots", "casters", "sweetcorn", "cooked hemp", "fishmeal pellet 8 mm"};
    const auto drawn = [&state](std::uint64_t below) {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return (state >> 33U) % below;
    };
    for (int i = 0; i < 5000; ++i) {
        MemoryShelf shelf(&bank());
        Strategy strategy = session({});
        double exact = 0;
        for (const std::string& name : names) {
            const double grams = 1 + static_cast<double>(drawn(900)), size = 100 + static_cast<double>(drawn(2000));
            const auto price = static_cast<std::int64_t>(drawn(2000));
            shelf.put(with_packs(name, {pack(size, price)}));
            strategy.feeds.push_back({at_start, {{name}}, FeedForm::loose, grams * gram, 1, {}});
            exact += static_cast<double>(price) * grams / size;
        }
        const StrategyCost cost = cost_of(strategy, shelf);
        std::int64_t used = 0, outlay = 0, left = 0, packs = 0;
        for (const CostLine& one_of : cost.lines) {
            used += one_of.used->minor();
            outlay += one_of.outlay->minor();
            left += one_of.left_value->minor();
        }
        for (const PackBought& bought : cost.packs) packs += bought.total().minor();
        REQUIRE(used == cost.used_minor);
        REQUIRE(outlay == cost.outlay_minor);
        REQUIRE(packs == cost.outlay_minor);
        REQUIRE(left == cost.left_over_minor);
        REQUIRE(std::abs(static_cast<double>(used) - exact) <= 0.5 + 1e-6);
    }
}

}  // namespace

TEST_CASE("in five thousand random cases the parts sum to the totals, which are rounded once") {
    sums_hold(20261125);
}

TEST_CASE("in five thousand more the parts sum to the totals") {
    sums_hold(20261127);
}
