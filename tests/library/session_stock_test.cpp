#include "library/session_stock.h"

#include <catch2/catch.hpp>

#include "answers/money/cost_strategy.h"
#include "answers/strategy/kept_in_feeds.h"
#include "day_of.h"
#include "library/change_shed.h"
#include "library/open_library.h"
#include "quantities/fault.h"
#include "quantities/units.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

const Date session_day = parse_date("2026-11-25");

void bring(Store& store, const std::string& name, Mass mass, const char* paid = nullptr) {
    Arrival arrival{name, StockKind::ingredient, {}};
    arrival.lot.got_on = session_day;
    arrival.lot.best_before = parse_date("2027-06-01");
    arrival.lot.left = in_milligrams(mass);
    if (paid) arrival.lot.paid = parse_money(paid);
    keep(store, arrival);
}

StockOnHand on_hand(Store& store) {
    return StockOnHand([&store](std::string_view ingredient) { return lots_in_shed(store.shed(), ingredient); });
}

}  // namespace

// By hand: £4.20 for 2 kg; 500 g used leaves 1.5 kg, three quarters of it, £3.15.
TEST_CASE("the shed is handed on lot by lot, at what was paid for what is left") {
    const TemporaryFolder folder;
    Store store = open_store(folder / "library.db");
    bring(store, "brown crumb", 2.0 * kilogram, "£4.20");
    take(store, Happening::used, {"brown crumb", in_milligrams(500.0 * gram)}, {session_day, std::nullopt});
    const std::vector<StockLot> lots = on_hand(store).lots("brown crumb", day_of("2026-11-25"));
    REQUIRE(lots.size() == 1);
    CHECK(lots[0].mass.in(gram) == Approx(1500));
    CHECK(lots[0].best_before == day_of("2027-06-01"));
    CHECK(money_text(lots[0].paid.value()) == "£3.15");
    CHECK(on_hand(store).lots("brown crumb", day_of("2027-07-01")).empty());
}

TEST_CASE("what is in the shed is not bought again") {
    const TemporaryFolder folder;
    Store store = open_store(folder / "library.db");
    CostRequest request;
    request.on = day_of("2026-11-25");
    request.ranges = CostRequest::Ranges::left_out;
    const Strategy strategy = store.find_strategy("open carpet").value();
    const StrategyCost bare = cost_strategy(store, strategy, on_hand(store), request);
    for (const IngredientNeed& need : bare.unrolled.totals) bring(store, need.ingredient.name, 2.0 * need.mass);
    const StrategyCost stocked = cost_strategy(store, strategy, on_hand(store), request);
    CHECK(bare.outlay_minor > 0);
    CHECK(stocked.outlay_minor == 0);
    CHECK(stocked.packs.empty());
}

TEST_CASE("a session is booked out at once, whole or not at all, and taken back at once") {
    const TemporaryFolder folder;
    Store store = open_store(folder / "library.db");
    const UnrolledStrategy session = unroll_strategy(store, store.find_strategy("open carpet").value());
    REQUIRE(session.totals.size() > 1);
    for (std::size_t i = 1; i < session.totals.size(); ++i)
        bring(store, session.totals[i].ingredient.name, 2.0 * session.totals[i].mass);
    CHECK_THROWS_AS(book_session(store, session, session_day), Error);
    CHECK(store.shed().left_of(session.totals[1].ingredient.name) == in_milligrams(2.0 * session.totals[1].mass));
    bring(store, session.totals[0].ingredient.name, 2.0 * session.totals[0].mass);
    const StockChangeAnswer booked = book_session(store, session, session_day);
    CHECK(booked.receipt.session == "open carpet");
    for (const IngredientNeed& need : session.totals)
        CHECK(store.shed().left_of(need.ingredient.name) == in_milligrams(2.0 * need.mass) - in_milligrams(need.mass));
    undo(store, std::nullopt, session_day);
    for (const IngredientNeed& need : session.totals)
        CHECK(store.shed().left_of(need.ingredient.name) == in_milligrams(2.0 * need.mass));
}

// By hand: 100 g that go off first, then 200 g; the 300 g in the cold are past their two days.
TEST_CASE("a session takes kept mix out of the tubs that are good on its day, and undoing puts it back") {
    const TemporaryFolder folder;
    Store store = open_store(folder / "library.db");
    const auto put_by = [&](double grams, StockState state, const char* day) {
        Arrival arrival{"silt bed", StockKind::mix, {}};
        arrival.lot.left = in_milligrams(grams * gram);
        arrival.lot.state = state;
        arrival.lot.got_on = parse_date(day);
        keep(store, arrival);
    };
    put_by(300, StockState::cold, "2026-11-10");
    put_by(200, StockState::frozen, "2026-11-20");
    put_by(100, StockState::frozen, "2026-11-10");
    const StockOnHand shed({}, [&store](std::string_view mix) { return kept_in_shed(store.shed(), mix); });
    const Strategy strategy = store.find_strategy("open carpet").value();
    const UnrolledStrategy bare = unroll_strategy(store, strategy);
    const UnrolledStrategy session = unroll_strategy(store, strategy, with_kept({}, strategy, shed, session_day));
    REQUIRE(session.kept.size() == 2);
    CHECK(session.kept[0].of.mass.in(gram) == Approx(100));
    CHECK(session.kept[1].of.mass.in(gram) == Approx(200));
    for (const IngredientNeed& need : bare.totals) bring(store, need.ingredient.name, need.mass);
    const StockChangeAnswer booked = book_session(store, session, session_day);
    const auto mix_left = [&] { return mass_of(store.shed().left_of("silt bed")).in(gram); };
    CHECK(mix_left() == Approx(300));
    for (std::size_t i = 0; i < bare.totals.size(); ++i)
        CHECK(mass_of(store.shed().left_of(bare.totals[i].ingredient.name)).in(gram) ==
              Approx((bare.totals[i].mass - session.totals[i].mass).in(gram)).margin(2e-3));
    REQUIRE(!booked.coming_home.empty());
    CHECK(booked.coming_home[0].mix == "silt bed");
    CHECK(booked.coming_home[0].keeps_best == StockState::cold);  // some of it was frozen
    CHECK(booked.coming_home[0].spare.in(gram) ==
          Approx((session.feeds[0].wet_mass - session.put_ins[0].wet_mass).in(gram)));
    undo(store, std::nullopt, session_day);
    CHECK(mix_left() == Approx(600));
}
