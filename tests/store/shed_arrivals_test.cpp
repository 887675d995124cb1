#include <catch2/catch.hpp>

#include "store/shed.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

void arrive(Store& store, Happening what, const char* name, StockKind kind, const char* on) {
    Arrival arrival{name, kind, {}};
    arrival.lot.state = kind == StockKind::mix ? StockState::cold : StockState::dry;
    arrival.lot.got_on = parse_date(on);
    arrival.lot.left = {1'000'000};
    store.change([&] { store.shed().add(what, arrival); });
}

}  // namespace

TEST_CASE("arrivals are the bought lots of ingredients by their day, without those that were taken back") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK(store.shed().arrivals().empty());
    arrive(store, Happening::bought, "brown crumb", StockKind::ingredient, "2026-03-01");
    arrive(store, Happening::bought, "maize meal", StockKind::ingredient, "2026-02-01");
    arrive(store, Happening::kept, "silt bed", StockKind::mix, "2026-02-02");
    arrive(store, Happening::bought, "bran", StockKind::ingredient, "2026-02-03");
    store.change([&] { store.shed().undo({}, parse_date("2026-02-04")); });
    arrive(store, Happening::bought, "brown crumb", StockKind::ingredient, "2026-04-01");
    store.change([&] {
        store.shed().take(Happening::used, {"maize meal", {1'000'000}}, {parse_date("2026-04-02"), {}});
        store.shed().count({"oats", StockKind::ingredient, {5000}, {}}, {parse_date("2026-04-03"), {}});
    });
    const std::vector<NewLot> lots = store.shed().arrivals();
    REQUIRE(lots.size() == 3);
    CHECK(lots[0].name == "maize meal");  // used up, but it came in
    CHECK(lots[0].on == parse_date("2026-02-01"));
    CHECK(lots[1].name == "brown crumb");
    CHECK(lots[1].on == parse_date("2026-03-01"));
    CHECK(lots[2].on == parse_date("2026-04-01"));
}
