#include "answers/money/convert_prices.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "day_of.h"
#include "quantities/fault_of.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

ConvertRequest into(const char* to, double rate, const char* from = nullptr) {
    ConvertRequest request;
    request.to = &currency_named(to);
    request.rate = rate;
    request.on = parse_date("2026-11-25");
    if (from) request.from = &currency_named(from);
    return request;
}

Pack a_pack(const char* price, const char* shop = "the mill") {
    Pack pack{1.0 * kilogram, std::nullopt, day_of("2026-03-01"), shop};
    if (*price) pack.price = parse_money(price);
    return pack;
}

std::int64_t there(std::int64_t minor, double rate, const char* from = "GBP", const char* to = "EUR") {
    return converted(Money(minor, currency_named(from)), rate, currency_named(to)).minor();
}

}  // namespace

// By hand. 250 x 1.17 is 292.5 and 50 x 1.17 is 58.5, though no double is 1.17: halves go to the even neighbour
// (ISO 80000-1, annex B, rule A).
TEST_CASE("a price is converted to the minor unit, halves to even, whatever digits the currencies have") {
    CHECK(there(100, 1.17) == 117);
    CHECK(there(250, 1.17) == 292);
    CHECK(there(50, 1.17) == 58);
    CHECK(there(150, 1.17) == 176);
    CHECK(there(350, 1.17) == 410);
    CHECK(there(210, 1.17) == 246);
    CHECK(there(210, 190.25, "GBP", "JPY") == 400);
    CHECK(there(350, 0.0052, "JPY", "GBP") == 182);
    CHECK(there(210, 0.39, "GBP", "KWD") == 819);
}

TEST_CASE("there and back changes no price by more than a minor unit of either currency") {
    CHECK(rc::check([] {
        const double rate = std::exp(*rc::gen::inRange(-3000, 3001) / 1000.0);
        const std::int64_t minor = *rc::gen::inRange<std::int64_t>(1, 100'000'000);
        const std::int64_t back = there(there(minor, rate), 1 / rate, "EUR", "GBP");
        const double off = std::abs(static_cast<double>(back - minor));
        // Half a unit there, carried back, and half a unit here.
        RC_ASSERT(off <= 0.5 / rate + 0.5 + 1e-6);
        if (rate >= 1) RC_ASSERT(off <= 1);
    }));
}

TEST_CASE("only prices in the other currency are converted, each with its day, its size and its shop") {
    const std::vector<NamedPacks> library{{"brown crumb", {a_pack("£2.10"), a_pack("€2.00", "the village shop")}},
                                          {"casters", {a_pack("")}},
                                          {"sweetcorn", {a_pack("€1.15")}}};
    const PriceConversion found = convert_prices(library, into("EUR", 1.17));
    REQUIRE(found.converted.size() == 1);
    CHECK(found.from->code == "GBP");
    CHECK(found.converted[0].name == "brown crumb");
    CHECK(found.converted[0].was.price == parse_money("£2.10"));
    CHECK(found.converted[0].is.price == parse_money("€2.46"));
    CHECK(found.converted[0].is.on == parse_date("2026-11-25"));
    CHECK(found.converted[0].is.shop == "the mill");
    CHECK(found.unchanged == 2);
    REQUIRE(found.changed.size() == 1);
    CHECK(found.changed[0].packs[1].price == parse_money("€2.00"));
    CHECK(found.changed[0].packs[1].on == parse_date("2026-03-01"));
}

TEST_CASE("a second time there is nothing to convert") {
    const PriceConversion once = convert_prices({{"brown crumb", {a_pack("£2.10")}}}, into("EUR", 1.17));
    for (const char* from : {static_cast<const char*>(nullptr), "GBP"}) {
        const PriceConversion twice = convert_prices(once.changed, into("EUR", 1.17, from));
        CHECK(twice.converted.empty());
        CHECK(twice.changed.empty());
        CHECK(twice.unchanged == 1);
    }
}

TEST_CASE("which of several currencies is meant must be said, and all of them are named") {
    const std::vector<NamedPacks> library{{"brown crumb", {a_pack("£2.10")}}, {"sweetcorn", {a_pack("$1.15")}}};
    const Fault fault = fault_of([&] { (void)convert_prices(library, into("EUR", 1.17)); });
    CHECK(fault.code == "several-currencies");
    CHECK_THAT(fault.message, Catch::Contains("GBP and USD"));
    CHECK_THAT(fault.hint, Catch::Contains("--from GBP"));
    const PriceConversion dollars = convert_prices(library, into("EUR", 0.9, "USD"));
    REQUIRE(dollars.converted.size() == 1);
    CHECK(dollars.converted[0].name == "sweetcorn");
}

TEST_CASE("every price that would come to nothing, or to too much, is named") {
    const std::vector<NamedPacks> library{
        {"brown crumb", {a_pack("£0.01")}}, {"sweetcorn", {a_pack("£1.00")}}, {"casters", {a_pack("£0.00")}}};
    try {
        (void)convert_prices(library, into("EUR", 0.001));
        FAIL("it was converted");
    } catch (const InputError& error) {
        REQUIRE(error.faults().size() == 2);
        CHECK(error.faults()[0].code == "unfit-price");
        CHECK_THAT(error.faults()[0].message, Catch::Contains("brown crumb") && Catch::Contains("nothing"));
        CHECK_THAT(error.faults()[1].message, Catch::Contains("sweetcorn"));
    }
    const std::vector<NamedPacks> dear{{"casters", {a_pack("£1000000")}}};
    CHECK_THAT(fault_of([&] { (void)convert_prices(dear, into("EUR", 1e6)); }).message, Catch::Contains("casters"));
    const PriceConversion free = convert_prices({{"casters", {a_pack("£0.00")}}}, into("EUR", 1.17));
    CHECK(free.converted.at(0).is.price == parse_money("€0.00"));
}

TEST_CASE("taking prices out of use leaves one pack of each size") {
    Pack large = a_pack("£8.00");
    large.size = 5.0 * kilogram;
    const PriceConversion found = convert_prices(
        {{"brown crumb", {a_pack("£2.10"), a_pack("£2.30", "the village shop"), large}}, {"casters", {a_pack("")}}},
        ConvertRequest{});
    CHECK(found.taken_out == 3);
    REQUIRE(found.changed.size() == 1);
    REQUIRE(found.changed[0].packs.size() == 2);
    for (const Pack& pack : found.changed[0].packs) CHECK_FALSE(pack.price);
    CHECK(found.changed[0].packs[1].size == large.size);
}
