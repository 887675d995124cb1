#include "library/change_shed.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "answers/mix/answer_mix.h"
#include "day_of.h"
#include "library/open_library.h"
#include "quantities/fault.h"
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

Fault fault_of(const std::function<void()>& work) {
    try {
        work();
    } catch (const Error& error) {
        return error.faults().front();
    }
    return {};
}

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

TEST_CASE("a purchase in another currency than the other packs brings nothing into the shed") {
    Bench bench;
    Purchase purchase{"brown crumb", {1.0 * kilogram, parse_money("€2.35"), day_of("2026-11-25"), "the mill"}, 1, {}};
    purchase.lot.got_on = today;
    purchase.lot.left = in_milligrams(1.0 * kilogram);
    CHECK(fault_of([&] { buy(bench.store, purchase); }).code == "mixed-currencies");
    CHECK(bench.store.shed().left_of("brown crumb") == Milligrams{});
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
