#include "library/change_shed.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "answers/mix/answer_mix.h"
#include "day_of.h"
#include "library/currency_in_use.h"
#include "library/open_library.h"
#include "quantities/fault.h"
#include "quantities/fault_of.h"
#include "quantities/units.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

const Date today = parse_date("2026-11-25");

/// The shipped library in a store of its own, with an empty shed.
class Bench {
public:
    void bring(const std::string& name, Mass mass) {
        Arrival arrival{name, StockKind::ingredient, {}};
        arrival.lot.got_on = today;
        arrival.lot.left = in_milligrams(mass);
        keep(store, arrival);
    }
    MixAnswer from_stock(const std::string& recipe) {
        MixRequest request;
        std::vector<Warning> warnings;
        request.target = on_hand_in_shed(store.recipe(recipe), store, store.shed(), request, today, warnings);
        return answer_mix(store, store.recipe(recipe), request);
    }

private:
    TemporaryFolder folder_;

public:
    Store store = open_store(folder_ / "library.db");
};

}  // namespace

TEST_CASE("what was bought is in the shed, and its price is the one in use") {
    Bench bench;
    Purchase purchase{"brown crumb", {1.0 * kilogram, parse_money("£2.35"), day_of("2026-11-25"), "the mill"}, 3, {}};
    purchase.lot.got_on = today;
    purchase.lot.left = in_milligrams(3.0 * kilogram);
    const StockChangeAnswer answer = buy(bench.store, purchase);
    CHECK(money_text(answer.receipt.lines.at(0).lot.paid.value()) == "£7.05");
    CHECK(answer.receipt.lines.at(0).lot.shop == "the mill");
    CHECK(bench.store.shed().left_of("brown crumb") == Milligrams{3'000'000});
    CHECK(bench.store.ingredient("brown crumb").packs.back().price == parse_money("£2.35"));
}

TEST_CASE("a purchase that is taken back leaves its price, and says so; anything else that is taken back does not") {
    Bench bench;
    Purchase purchase{"brown crumb", {1.0 * kilogram, parse_money("£23.50"), today, "the mill"}, 1, {}};
    purchase.lot.got_on = today;
    purchase.lot.left = in_milligrams(1.0 * kilogram);
    buy(bench.store, purchase);
    take(bench.store, Happening::used, {"brown crumb", in_milligrams(200.0 * gram)}, {today, {}});
    CHECK(undo(bench.store, std::nullopt, today).warnings.empty());
    const StockChangeAnswer undone = undo(bench.store, std::nullopt, today);
    REQUIRE(undone.warnings.size() == 1);
    CHECK(undone.warnings[0].code == "price-stands");
    CHECK_THAT(undone.warnings[0].message, Catch::Contains("1 kg of brown crumb at £23.50"));
    CHECK_THAT(undone.warnings[0].message,
               Catch::EndsWith("'baitwright price \"brown crumb\" --pack 1kg --is PRICE --shop \"the mill\"'"));
}

TEST_CASE("of two sizes bought on one day the price of the one that is taken back is named") {
    Bench bench;
    for (const auto& [mass, price] : {std::pair{8.0 * ounce, "£1.00"}, {1.0 * pound, "£1.80"}}) {
        Purchase purchase{"casters", {mass, parse_money(price), today, "the mill"}, 2, {}};
        purchase.lot.got_on = today;
        purchase.lot.left = in_milligrams(2 * mass);
        buy(bench.store, purchase);
    }
    for (const char* named : {"1 lb of casters at £1.80", "8 oz of casters at £1.00"}) {
        const StockChangeAnswer undone = undo(bench.store, std::nullopt, today);
        REQUIRE(undone.warnings.size() == 1);
        CHECK_THAT(undone.warnings[0].message, Catch::Contains(named));
    }
}

TEST_CASE("answers over the whole store are in the currency that most prices are in, or in the usual one") {
    Bench bench;
    CHECK(currency_in_use(bench.store) == &currency_named("GBP"));
    bench.store.change([&] { bench.store.put_usual("currency", {"EUR"}); });
    CHECK(currency_in_use(bench.store) == &currency_named("EUR"));
    CHECK(most_used_currency(bench.store) == &currency_named("GBP"));
}

TEST_CASE("a purchase in another currency is in the shed, and the way to one currency is told") {
    Bench bench;
    Purchase purchase{"brown crumb", {1.0 * kilogram, parse_money("€2.35"), day_of("2026-11-25"), "the mill"}, 1, {}};
    purchase.lot.got_on = today;
    purchase.lot.left = in_milligrams(1.0 * kilogram);
    const StockChangeAnswer answer = buy(bench.store, purchase);
    CHECK(bench.store.shed().left_of("brown crumb") == Milligrams{1'000'000});
    REQUIRE(answer.warnings.size() == 1);
    CHECK(answer.warnings[0].code == "other-currency");
    CHECK_FALSE(answer.warnings[0].answer_is_no);
    CHECK_THAT(answer.warnings[0].message, Catch::Contains("are in GBP") &&
                                               Catch::Contains("tell this one in GBP, or ") &&
                                               Catch::Contains("--to EUR --at RATE"));
}

TEST_CASE("a price in the currency of all the others is told without a word about currencies") {
    Bench bench;
    const PriceChange change =
        tell_price(bench.store, "brown crumb", {1.0 * kilogram, parse_money("£2.35"), today, "the mill"});
    CHECK(change.warnings.empty());
}

TEST_CASE("all prices of the store are converted in one go, the old ones are kept, and what was paid stays") {
    Bench bench;
    Purchase purchase{"brown crumb", {1.0 * kilogram, parse_money("£2.35"), today, "the mill"}, 1, {}};
    purchase.lot.got_on = today;
    purchase.lot.left = in_milligrams(1.0 * kilogram);
    buy(bench.store, purchase);
    const auto in_pounds = bench.store.currencies_in_use();
    REQUIRE(in_pounds.size() == 1);
    const std::size_t old_before = bench.store.old_prices("brown crumb").size();
    const std::vector<Pack> packs_before = bench.store.ingredient("brown crumb").packs;
    ConvertRequest request;
    request.to = &currency_named("EUR");
    request.rate = 1.17;
    request.on = today;
    request.doing = ConvertRequest::Doing::only_shown;
    CHECK(convert_prices(bench.store, request).converted.size() == static_cast<std::size_t>(in_pounds[0].prices));
    CHECK(*bench.store.currencies_in_use().at(0).currency == currency_named("GBP"));
    request.doing = ConvertRequest::Doing::done;
    CHECK(convert_prices(bench.store, request).converted.size() == static_cast<std::size_t>(in_pounds[0].prices));
    const auto in_euros = bench.store.currencies_in_use();
    REQUIRE(in_euros.size() == 1);
    CHECK(in_euros[0].currency->code == "EUR");
    CHECK(in_euros[0].prices == in_pounds[0].prices);
    CHECK(bench.store.old_prices("brown crumb").size() == old_before + packs_before.size());
    CHECK(bench.store.ingredient("brown crumb").packs.size() == packs_before.size());
    CHECK(bench.store.shed().find("brown crumb")->lots.at(0).paid == parse_money("£2.35"));
    CHECK(convert_prices(bench.store, request).converted.empty());
}

TEST_CASE("where one price cannot be converted, none is") {
    Bench bench;
    tell_price(bench.store, "brown crumb", {7.0 * kilogram, parse_money("£0.01"), today, {}});
    ConvertRequest request;
    request.to = &currency_named("EUR");
    request.rate = 0.1;
    request.on = today;
    CHECK(fault_of([&] { convert_prices(bench.store, request); }).code == "unfit-price");
    CHECK(bench.store.currencies_in_use().size() == 1);
    CHECK(bench.store.currencies_in_use().at(0).currency->code == "GBP");
}

TEST_CASE("all prices are taken out of use, and stay known") {
    Bench bench;
    const std::vector<Pack> before = bench.store.ingredient("brown crumb").packs;
    const PriceConversion found = convert_prices(bench.store, ConvertRequest{});
    CHECK(found.taken_out > 0);
    CHECK(bench.store.currencies_in_use().empty());
    CHECK_FALSE(bench.store.ingredient("brown crumb").packs.empty());
    CHECK(bench.store.old_prices("brown crumb").size() >= before.size());
    CHECK(convert_prices(bench.store, ConvertRequest{}).taken_out == 0);
}

TEST_CASE("the most from the shed is set by what runs out first, worked out by hand") {
    // silt bed is 4 fishmeal, 3 brown crumb, 2 ground fishmeal pellet, 1 maize meal. 250 g of pellet are 2 parts of 10:
    // so 1250 g dry, which the 450 g of crumb (1500 g) and the others allow.
    Bench bench;
    bench.bring("fishmeal, brown", 2.0 * kilogram);
    bench.bring("brown crumb", 450.0 * gram);
    bench.bring("ground fishmeal pellet", 250.0 * gram);
    bench.bring("maize meal", 500.0 * gram);
    const MixAnswer answer = bench.from_stock("silt bed");
    CHECK(answer.limited_by == "ground fishmeal pellet");
    CHECK(answer.dry_mass.in(gram) == Approx(1250));
}

TEST_CASE("what the shed holds none of is named, all of it") {
    Bench bench;
    bench.bring("brown crumb", 1.0 * kilogram);
    const Fault fault = fault_of([&] { bench.from_stock("silt bed"); });
    CHECK(fault.code == "not-in-shed");
    for (const char* name : {"'fishmeal, brown'", "'ground fishmeal pellet'", "'maize meal'"})
        CHECK_THAT(fault.message, Catch::Contains(name));
    CHECK_THAT(fault.message, !Catch::Contains("brown crumb"));
}

TEST_CASE("the most that the shed allows can always be booked, and then nothing is left of what limits it") {
    Bench bench;
    CHECK(rc::check([&bench] {
        for (const char* name : {"fishmeal, brown", "brown crumb", "ground fishmeal pellet", "maize meal"})
            bench.bring(name, *rc::gen::inRange(1000, 3000000) / 1e6 * kilogram);
        MixAnswer answer = bench.from_stock("silt bed");
        book_mix(bench.store, answer, today);
        RC_ASSERT(bench.store.shed().left_of(answer.limited_by) == Milligrams{});
        Mass booked;
        for (const StockReceipt::Line& line : answer.booked->lines) booked -= mass_of(line.by);
        RC_ASSERT(std::abs((booked - answer.dry_mass).in(gram)) <= 0.002);
        undo(bench.store, answer.booked->entry, today);
        for (const char* name : {"fishmeal, brown", "brown crumb", "ground fishmeal pellet", "maize meal"})
            take(bench.store, Happening::wasted, {name, bench.store.shed().left_of(name)}, {today, {}});
    }));
}

TEST_CASE("a price that was told late is kept, and said not to be in use") {
    Bench bench;
    const PriceChange change = tell_price(
        bench.store, "brown crumb", {1.0 * kilogram, parse_money("£1.70"), day_of("2020-01-01"), "the village shop"});
    CHECK_FALSE(change.in_use);
    CHECK(change.before->price == parse_money("£2.10"));
    CHECK(bench.store.old_prices("brown crumb").size() == 1);
    CHECK(tell_price(bench.store, "brown crumb",
                     {1.0 * kilogram, parse_money("£2.20"), day_of("2026-11-25"), "the village shop"})
              .in_use);
}
