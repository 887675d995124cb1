// Every strategy we ship: it says when it suits and when not, can be fed as it stands, and comes to a sensible amount.
#include <catch2/catch.hpp>

#include "answers/strategy/odd_strategy.h"
#include "library/open_library.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

const MemoryShelf& strategies_shelf() {
    static const auto shipped = shipped_shelf();
    return *shipped;
}

}  // namespace

TEST_CASE("at least eight strategies are shipped, each with its purpose, its limits and its reason") {
    CHECK(strategies_shelf().strategy_names().size() >= 8);
    for (const std::string& name : strategies_shelf().strategy_names()) {
        const Strategy strategy = strategies_shelf().strategy(name);
        CAPTURE(name);
        CHECK_FALSE(strategy.purpose.empty());
        CHECK_FALSE(strategy.avoid.empty());
        CHECK_FALSE(strategy.why.empty());
        CHECK(strategy.water.depth.has_value());
        CHECK(strategy.water.temperature.has_value());
        CHECK_FALSE(strategy.water.clarity.empty());
        CHECK_FALSE(strategy.hookbaits.empty());
    }
}

// The amounts are common practice, no source: a session takes from a pint to a bucket, less in the cold.
TEST_CASE("each shipped strategy unrolls without fault or oddity, to between a quarter of a litre and eight litres") {
    for (const std::string& name : strategies_shelf().strategy_names()) {
        const Strategy strategy = strategies_shelf().strategy(name);
        CAPTURE(name);
        const UnrolledStrategy unrolled = unroll_strategy(strategies_shelf(), strategy);
        CHECK(oddities_of(strategy, unrolled).empty());
        CHECK(unrolled.feeds.size() == strategy.feeds.size());
        CAPTURE(unrolled.wet_volume.in(litre));
        CHECK(unrolled.wet_volume >= 0.25 * litre);
        CHECK(unrolled.wet_volume <= 8.0 * litre);
        if (strategy.water.temperature.value() < Temperature::from_celsius(8)) CHECK(unrolled.wet_volume < 1.0 * litre);
        for (const IngredientNeed& need : unrolled.totals) CHECK_FALSE(need.ingredient.packs.empty());
    }
}
