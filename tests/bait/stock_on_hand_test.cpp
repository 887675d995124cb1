#include "bait/stock_on_hand.h"

#include <catch2/catch.hpp>

#include "day_of.h"
#include "quantities/units.h"

using namespace baitwright;

TEST_CASE("the first to expire comes first, what has no date last, whatever the order of putting in") {
    StockOnHand stock;
    stock.put("Brown Crumb", {100.0 * gram});
    stock.put("brown  crumb", {200.0 * gram, day_of("2027-01-01")});
    stock.put("brown crumb", {300.0 * gram, day_of("2026-12-01")});
    const std::vector<StockLot> lots = stock.lots("BROWN CRUMB", day_of("2026-11-25"));
    REQUIRE(lots.size() == 3);
    CHECK(lots[0].mass.in(gram) == Approx(300));
    CHECK(lots[1].mass.in(gram) == Approx(200));
    CHECK(lots[2].mass.in(gram) == Approx(100));
}

TEST_CASE("a lot is good on the day of its date, and not after") {
    StockOnHand stock;
    stock.put("maggots", {100.0 * gram, day_of("2026-11-25")});
    CHECK(stock.lots("maggots", day_of("2026-11-25")).size() == 1);
    CHECK(stock.lots("maggots", day_of("2026-11-26")).empty());
    CHECK(stock.lots("casters", day_of("2026-11-25")).empty());
}

TEST_CASE("who keeps the ledger is asked for what is needed, and what is past its best is left out all the same") {
    std::vector<std::string> asked;
    const StockOnHand stock([&](std::string_view ingredient) {
        asked.emplace_back(ingredient);
        return std::vector<StockLot>{{100.0 * gram, day_of("2026-11-24")}, {200.0 * gram}};
    });
    CHECK(asked.empty());
    const std::vector<StockLot> lots = stock.lots("maggots", day_of("2026-11-25"));
    REQUIRE(lots.size() == 1);
    CHECK(lots[0].mass.in(gram) == Approx(200));
    CHECK(asked == std::vector<std::string>{"maggots"});
}

TEST_CASE("tubs of kept mix come with the first to expire first, whatever the case of the name") {
    StockOnHand stock;
    stock.put(KeptMix{"Silt bed", 300.0 * gram, StockState::frozen, {}, {}});
    stock.put(KeptMix{"silt bed", 200.0 * gram, StockState::frozen, {}, day_of("2027-02-01")});
    stock.put(KeptMix{"silt bed", 100.0 * gram, StockState::cold, {}, day_of("2026-11-28")});
    const std::vector<KeptMix> tubs = stock.kept("silt  BED");
    REQUIRE(tubs.size() == 3);
    CHECK(tubs[0].mass.in(gram) == 100);
    CHECK(tubs[2].mass.in(gram) == 300);
    CHECK(stock.kept("pale cloud").empty());
    CHECK(is_good_on(tubs[0], day_of("2026-11-28")));
    CHECK_FALSE(is_good_on(tubs[0], day_of("2026-11-29")));
    CHECK(is_good_on(tubs[2], day_of("2030-01-01")));
}
