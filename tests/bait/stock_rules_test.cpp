#include "bait/stock_rules.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "quantities/units.h"

using namespace baitwright;

namespace {

Date on(const char* text) {
    return parse_date(text);
}

Lot lot(std::int64_t id, std::int64_t grams, const char* got, std::optional<Date> best = {},
        StockState state = StockState::dry) {
    Lot made;
    made.id = id;
    made.state = state;
    made.got_on = on(got);
    made.best_before = best;
    made.left = {grams * 1000};
    return made;
}

Milligrams grams(std::int64_t count) {
    return {count * 1000};
}

}  // namespace

TEST_CASE("what expires first goes first, then what came first, then the older number; what has no date goes last") {
    const Lot soon = lot(4, 1, "2026-03-01", on("2026-04-01")), later = lot(1, 1, "2026-01-01", on("2026-05-01"));
    const Lot undated = lot(2, 1, "2025-01-01");
    CHECK(goes_first(soon, later));
    CHECK(goes_first(later, undated));
    CHECK_FALSE(goes_first(undated, soon));
    CHECK(goes_first(lot(9, 1, "2026-01-01", on("2026-05-01")), lot(3, 1, "2026-02-01", on("2026-05-01"))));
    CHECK(goes_first(lot(3, 1, "2026-01-01"), lot(9, 1, "2026-01-01")));
}

TEST_CASE("a use empties the first bag and opens the next") {
    const std::vector<Lot> lots{lot(1, 500, "2026-01-01", on("2026-10-01")),
                                lot(2, 300, "2026-02-01", on("2026-06-01"))};
    CHECK(taken(lots, grams(400), {on("2026-03-01"), {}}) == std::vector<Movement>{{2, -grams(300)}, {1, -grams(100)}});
}

TEST_CASE("what came later, or is kept otherwise, is out of reach") {
    const std::vector<Lot> lots{lot(1, 500, "2026-03-02", on("2026-04-01")),
                                lot(2, 300, "2026-02-01", {}, StockState::frozen)};
    CHECK(left_in(lots, {on("2026-03-01"), {}}) == grams(300));
    CHECK(left_in(lots, {on("2026-03-02"), {}}) == grams(800));
    CHECK(left_in(lots, {on("2026-03-02"), StockState::frozen}) == grams(300));
    CHECK_THROWS_AS(taken(lots, grams(301), {on("2026-03-01"), {}}), std::logic_error);
}

TEST_CASE("a count that finds less takes the difference, one that finds more adds it to the bag that goes first") {
    const std::vector<Lot> lots{lot(1, 500, "2026-01-01", on("2026-10-01")),
                                lot(2, 300, "2026-02-01", on("2026-06-01"))};
    const Reach today{on("2026-03-01"), {}};
    CHECK(corrected(lots, grams(450), today, Surplus::in_first_lot).movements ==
          std::vector<Movement>{{2, -grams(300)}, {1, -grams(50)}});
    CHECK(corrected(lots, grams(900), today, Surplus::in_first_lot).movements ==
          std::vector<Movement>{{2, grams(100)}});
    CHECK(corrected(lots, grams(800), today, Surplus::in_first_lot).movements.empty());
    const Correction own = corrected(lots, grams(900), today, Surplus::own_bag);
    CHECK(own.movements.empty());
    CHECK(own.new_lot == grams(100));
    CHECK(corrected({}, grams(900), today, Surplus::in_first_lot).new_lot == grams(900));
}

TEST_CASE("taking is exact to the milligram and never more than a lot holds") {
    CHECK(rc::check([] {
        std::vector<Lot> lots;
        Milligrams held;
        const int count = *rc::gen::inRange(1, 8);
        for (int i = 1; i <= count; ++i) {
            Lot one = lot(i, 0, "2026-01-01");
            one.left = {*rc::gen::inRange<std::int64_t>(0, 1000000)};
            if (*rc::gen::arbitrary<bool>())
                one.best_before = on("2026-05-01") + std::chrono::days(*rc::gen::inRange(0, 4));
            held += one.left;
            lots.push_back(one);
        }
        const Milligrams mass{*rc::gen::inRange<std::int64_t>(0, held.count + 1)};
        Milligrams out;
        for (const Movement& movement : taken(lots, mass, {on("2026-02-01"), {}})) {
            RC_ASSERT(movement.by < Milligrams{});
            RC_ASSERT(-movement.by <= lots[static_cast<std::size_t>(movement.lot - 1)].left);
            out -= movement.by;
        }
        RC_ASSERT(out == mass);
    }));
}

TEST_CASE("best before is reckoned from what the ingredient says of its keeping, in whole days") {
    const Keeping crumb{9.0 * month, std::nullopt, 3.0 * month};
    // 9 mean months are 273.9 days, 3 are 91.3.
    CHECK(best_before(on("2026-01-01"), StockState::dry, crumb) == on("2026-01-01") + std::chrono::days(273));
    CHECK(best_before(on("2026-01-01"), StockState::frozen, crumb) == on("2026-01-01") + std::chrono::days(91));
    CHECK_FALSE(best_before(on("2026-01-01"), StockState::cold, crumb));
}

// Common practice, no source: a damp mix keeps a day or two in the cold and three months frozen.
TEST_CASE("a damp mix keeps two days cold and three months frozen, and not at all in the warm") {
    CHECK(best_before(on("2026-01-01"), StockState::cold, keeping_of_mix()) == on("2026-01-03"));
    CHECK(best_before(on("2026-01-01"), StockState::frozen, keeping_of_mix()) == on("2026-04-02"));
    CHECK_FALSE(best_before(on("2026-01-01"), StockState::dry, keeping_of_mix()));
}

TEST_CASE("a lot is past its best the day after") {
    const Lot dated = lot(1, 1, "2026-01-01", on("2026-04-02"));
    CHECK_FALSE(is_past(dated, on("2026-04-02")));
    CHECK(is_past(dated, on("2026-04-03")));
    CHECK_FALSE(is_past(lot(1, 1, "2026-01-01"), on("2099-01-01")));
}

TEST_CASE("milligrams are the nearest, and sums of them exact") {
    CHECK(in_milligrams(400.0 * gram) == Milligrams{400000});
    CHECK(in_milligrams(0.1 * gram) == Milligrams{100});
    CHECK(in_milligrams(1.0 * ounce) == Milligrams{28350});  // 28.349523125 g
    Milligrams sum;
    for (int i = 0; i < 10; ++i) sum += in_milligrams(0.1 * gram);
    CHECK(sum == in_milligrams(1.0 * gram));
    CHECK(in_milligrams(mass_of({123456789})) == Milligrams{123456789});
}
