#include <catch2/catch.hpp>

#include "store/random_log.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

TEST_CASE("what was learnt before comes back to the bit, with what was written, and once") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK_FALSE(store.log().can_restore_learnt());
    const LearntWater first{0.1, 0.2, {{"bag 1", 0.3, 0.4, 1, 0.7, 0}}, 1, {1, 2, 3, 4}},
        second{0.5, 0.2, {{"bag 1", 0.1, 0.4, 2}, {"bag 2", 0.3, 0.4, 1}}, 1, {1, 2, 3, 4, 5, 6}};
    const auto put = [&](const LearntWater& water, const std::vector<LearntMix>& mixes) {
        store.change([&] {
            store.log().keep_learnt_before({{"bag 1", "was", "is"}});
            store.log().put_learnt(water, mixes);
        });
    };
    put(first, {{"silt bed", {}, LearntFactor{0.1, 0.2, 3}, {}}});
    put(second, {});
    REQUIRE(store.log().learnt_written().size() == 1);
    CHECK(store.log().learnt_written()[0].before == "was");
    CHECK(store.log().learnt_written()[0].after == "is");
    store.change([&] { store.log().restore_learnt(); });
    CHECK(written_out(store.log().learnt_water()) == written_out(first));
    CHECK(store.log().learnt_water().bags[0].measured_absorption == 0.7);
    CHECK(store.learnt_mix("silt bed")->hold->times == 3);
    CHECK_FALSE(store.log().can_restore_learnt());
    CHECK(store.log().learnt_written().empty());
}

TEST_CASE("that nothing was learnt before is kept as well") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    store.change([&] {
        store.log().keep_learnt_before({});
        store.log().put_learnt({0.1, 0.2, {}, 1, {1, 2}}, {});
    });
    CHECK(store.log().can_restore_learnt());
    store.change([&] { store.log().restore_learnt(); });
    CHECK_FALSE(store.log().learnt_water().known());
}
