#include <SQLiteCpp/Database.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "quantities/fault.h"
#include "quantities/fault_of.h"
#include "store/random_log.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

void put_learnt(Store& store, const LearntWater& water, const std::vector<LearntMix>& mixes = {}) {
    store.change([&] { store.log().put_learnt(water, mixes); });
}

}  // namespace

TEST_CASE("what was learnt of water comes back to the bit, whole and in parts") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK(rc::check("learnt", [&] {
        const auto bags = static_cast<std::size_t>(*rc::gen::inRange(0, 6));
        const LearntWater water = any_learnt(bags, 1 + static_cast<std::size_t>(*rc::gen::inRange(0, 14)));
        put_learnt(store, water);
        RC_ASSERT(written_out(store.log().learnt_water()) == written_out(water));
        const std::vector<std::string> asked{"bag 4", "BAG 2", "bran", "bag 4", ""};
        RC_ASSERT(written_out(store.learnt_water(asked)) == written_out(part_of(water, asked)));
    }));
}

TEST_CASE("nothing is known where nothing was ever learnt, and nothing again where that is put") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    const auto knows_nothing = [&] {
        return !store.learnt_water({"bag 1"}).known() && !store.log().learnt_water().known() &&
               !store.learnt_mix("silt bed") && store.log().learnt_mixes().empty();
    };
    CHECK(knows_nothing());
    const LearntWater water{0.1, 0.2, {{"bag 1", 0.3, 0.4, 1}}, 1, {1, 2, 3, 4}};
    put_learnt(store, water, {{"silt bed", {}, {}, LearntFactor{0.2, 0.1, 2}}});
    CHECK_FALSE(knows_nothing());
    put_learnt(store, {});
    CHECK(knows_nothing());
}

TEST_CASE("what was learnt of mixes comes back by its parts, found whatever the case") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    put_learnt(store, {},
               {{"Silt Bed", LearntFactor{0.1, 0.05, 4}, {}, LearntFactor{-0.2, 0.3, 1}},
                {"river mix", {}, LearntFactor{1.5, 0.25, 2}, {}}});
    const auto silt = store.learnt_mix(" silt  bed");
    REQUIRE(silt);
    CHECK(silt->name == "Silt Bed");
    CHECK(silt->cup_weight->mean == 0.1);
    CHECK(silt->cup_weight->times == 4);
    CHECK_FALSE(silt->hold);
    CHECK(silt->carpet->mean == -0.2);
    CHECK(silt->carpet->sigma == 0.3);
    const auto all = store.log().learnt_mixes();
    REQUIRE(all.size() == 2);
    CHECK(all[0].name == "river mix");
    CHECK(all[0].hold->mean == 1.5);
    CHECK_FALSE(store.learnt_mix("bran"));
}

TEST_CASE("what is not whole, or no number, is never put") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    const LearntWater good{0.1, 0.2, {{"bran", 0.3, 0.4, 1}}, 1, {1, 2, 3, 4}};
    put_learnt(store, good);
    LearntWater shorter = good, none = good, nameless = good;
    shorter.factor.pop_back();
    none.factor[2] = std::numeric_limits<double>::quiet_NaN();
    nameless.bags[0].name.clear();
    for (const LearntWater& bad : {shorter, none, nameless}) CHECK_THROWS_AS(put_learnt(store, bad), std::logic_error);
    CHECK(written_out(store.log().learnt_water()) == written_out(good));
}

TEST_CASE("learnt numbers from elsewhere are named, and learning again mends them") {
    const LearntWater water{0.1, 0.2, {{"bran", 0.3, 0.4, 1}}, 2, {1, 2, 3, 4, 5, 6, 7, 8}};
    for (const char* sql :
         {"UPDATE learnt_water SET mean = 1e300", "UPDATE learnt_water SET mean = -1e999 WHERE part = 'gap'",
          "UPDATE learnt_water SET mixes = -1 WHERE part = 'gap'",
          "UPDATE learnt_water SET mixes = 4611686018427387904", "UPDATE learnt_water SET factor = x''",
          "UPDATE learnt_water SET factor = x'00'",
          "UPDATE learnt_water SET factor = zeroblob(8) WHERE part = 'memory'",
          "UPDATE learnt_water SET factor = zeroblob(24) WHERE part = 'gap'",
          "UPDATE learnt_water SET factor = x'000000000000f07f000000000000f07f' WHERE part = 'gap'",
          "UPDATE learnt_water SET factor = x'000000000000f87f000000000000f87f'", "UPDATE learnt_mix SET mean = 1e300",
          "UPDATE learnt_mix SET sigma = -1", "UPDATE learnt_mix SET times = -1"}) {
        CAPTURE(sql);
        const TemporaryFolder folder;
        const auto path = folder / "library.db";
        Store store = Store::open(path);
        const std::vector<LearntMix> mixes{{"silt bed", LearntFactor{0.1, 0.05, 4}, {}, {}}};
        put_learnt(store, water, mixes);
        CHECK(SQLite::Database(path.string(), SQLite::OPEN_READWRITE).exec(sql) > 0);
        const Fault fault = fault_of([&] {
            (void)store.learnt_water({"bran"});
            (void)store.learnt_mix("silt bed");
        });
        CHECK(fault.code == "stored-out-of-range");
        CHECK(fault.hint.find("learn --apply") != std::string::npos);
        CHECK(fault_of([&] {
                  (void)store.log().learnt_water();
                  (void)store.log().learnt_mixes();
              }).code == "stored-out-of-range");
        put_learnt(store, water, mixes);
        CHECK(store.learnt_water({"bran"}).bags.size() == 1);
    }
}

TEST_CASE("learnt rows that cannot be are damage") {
    const LearntWater water{0.1, 0.2, {{"bran", 0.3, 0.4, 1}}, 1, {1, 2, 3, 4}};
    for (const char* sql :
         {"DELETE FROM learnt_water WHERE part = 'memory'", "DELETE FROM learnt_water WHERE part = 'gap'",
          "DELETE FROM learnt_water WHERE part = 'absorption'",
          "UPDATE learnt_water SET part = 'grip' WHERE part = 'memory'",
          "UPDATE learnt_water SET part = 'hand2' WHERE part = 'hand'"}) {
        CAPTURE(sql);
        const TemporaryFolder folder;
        const auto path = folder / "library.db";
        Store store = Store::open(path);
        put_learnt(store, water);
        CHECK(SQLite::Database(path.string(), SQLite::OPEN_READWRITE).exec(sql) > 0);
        CHECK(fault_of([&] { (void)store.learnt_water({"bran"}); }).code == "damaged-store");
        CHECK(fault_of([&] { (void)store.log().learnt_water(); }).code == "damaged-store");
    }
}
