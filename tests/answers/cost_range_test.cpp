#include "answers/money/cost_range.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "answers/money/cost_strategy.h"
#include "answers/sessions.h"
#include "day_of.h"
#include "physics/sobol_rows.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

/// The fishmeal mix and pellets at a price, with spreads of so much of their own. What they share is the hand alone.
class Doubtful : public MemoryShelf {
public:
    explicit Doubtful(double factor) : MemoryShelf(&bank()) {
        for (const char* name : {"fishmeal, brown", "brown crumb", "ground fishmeal pellet", "maize meal",
                                 "sweet liquid", "fishmeal pellet 4 mm", "maggots"}) {
            Ingredient i = bank().ingredient(name);
            for (auto* ratio : {&i.absorption, &i.slump, &i.moisture}) ratio->spread = factor * ratio->spread;
            i.absorption.source = i.slump.source = {Origin::published, "a table"};
            for (auto* density : {&i.loose_density, &i.envelope_density}) density->spread = factor * density->spread;
            i.particle_size.spread = factor * i.particle_size.spread;
            i.packs = {{1.0 * kilogram, Money(400, currency_named("GBP")), day_of("2026-03-01"), {}}};
            put(i);
        }
    }
};

/// So much of the fishmeal mix lies in the freezer, in tubs alike.
StrategyCost cost_with_kept(const Shelf& shelf, const Strategy& strategy, double grams, int tubs = 1) {
    CostRequest request;
    for (int i = 0; i < tubs; ++i)
        request.what_if.kept.push_back({"fishmeal mix", grams / tubs * gram, StockState::frozen});
    return cost_strategy(shelf, strategy, {}, request);
}

StrategyCost cost_of(const Shelf& shelf, const Strategy& strategy, std::uint64_t seed = 1) {
    CostRequest request;
    request.seed = seed;
    return cost_strategy(shelf, strategy, {}, request);
}

}  // namespace

// Dry pellets by volume: the mass is the loose density, log-normal with a spread of 12 %: exp(-+1.645 x 0.1196).
TEST_CASE("the widest cost before anything is learnt draws 195 normals, and each has its row of direction numbers") {
    CHECK(most_cost_normals == 195);
    CHECK(most_cost_normals <= SobolRows::max_dimension);
}

TEST_CASE("a cup of dry pellets is as unsure as their loose density") {
    const Doubtful shelf(1);
    const StrategyCost cost = cost_of(shelf, session({cups("fishmeal pellet 4 mm", 250, 40)}));
    const double used = 400 * 0.640 * 10, sigma = std::sqrt(std::log(1 + 0.12 * 0.12));
    CHECK(cost.used_range->middle == Approx(used).epsilon(0.01));
    CHECK(cost.used_range->low == Approx(used * std::exp(-1.6449 * sigma)).epsilon(0.015));
    CHECK(cost.used_range->high == Approx(used * std::exp(1.6449 * sigma)).epsilon(0.015));
}

TEST_CASE("what goes in dry by weight is sure") {
    const Doubtful shelf(1);
    const Feed weighed{at_start, {{"fishmeal pellet 4 mm"}}, FeedForm::loose, 500.0 * gram, 1, {}};
    const StrategyCost cost = cost_of(shelf, session({weighed}));
    CHECK(cost.used_range->low == Approx(200));
    CHECK(cost.used_range->high == Approx(200));
}

TEST_CASE("the range of a mix holds the plain answer, and shrinks with what its bags may differ by") {
    const Strategy strategy = session({cups("fishmeal mix", 250, 12), cups("maggots", 100, 1)}, 0.1);
    const StrategyCost wide = cost_of(Doubtful(1), strategy), narrow = cost_of(Doubtful(0.1), strategy);
    CHECK(wide.used_range->low < static_cast<double>(wide.used_minor));
    CHECK(wide.used_range->high > static_cast<double>(wide.used_minor));
    const auto width = [](const StrategyCost& cost) { return cost.used_range->high - cost.used_range->low; };
    CHECK(width(narrow) < 0.9 * width(wide));
    CHECK(width(narrow) > 0);  // the hand is left
}

TEST_CASE("one seed gives one range, another nearly the same") {
    const Doubtful shelf(1);
    const Strategy strategy = session({cups("fishmeal mix", 250, 12)});
    const StrategyCost first = cost_of(shelf, strategy), again = cost_of(shelf, strategy),
                       other = cost_of(shelf, strategy, 2);
    CHECK(first.used_range->low == again.used_range->low);
    CHECK(first.used_range->low != other.used_range->low);
    CHECK(first.used_range->low == Approx(other.used_range->low).epsilon(0.03));
}

// Two cups of one mix are unsure together: their sum is no surer than one of them.
TEST_CASE("what is the same bag in two feeds differs the same way in both") {
    const Doubtful shelf(1);
    const StrategyCost one_feed = cost_of(shelf, session({cups("fishmeal pellet 4 mm", 250, 40)}));
    const StrategyCost two =
        cost_of(shelf, session({cups("fishmeal pellet 4 mm", 250, 20), cups("fishmeal pellet 4 mm", 250, 20)}));
    CHECK(two.used_range->low == Approx(one_feed.used_range->low));
    CHECK(two.used_range->high == Approx(one_feed.used_range->high));
}

// What twelve cups hold differs by a tenth or two, never by as much again. By hand: 100 g at £4 a kilo, by weight and
// so sure, are 40p.
TEST_CASE("kept mix that is left over goes in where the cups hold more, so nothing fresh is used in any draw") {
    const Doubtful shelf(1);
    const Feed weighed{at_start, {{"maggots"}}, FeedForm::loose, 100.0 * gram, 1, {}};
    const Strategy strategy = session({cups("fishmeal mix", 250, 12), weighed});
    const double needed = cost_of(shelf, strategy).unrolled.feeds[0].wet_mass.in(gram);
    for (const int tubs : {1, 3}) {  // of three, the last is not touched in the middle
        const StrategyCost cost = cost_with_kept(shelf, strategy, 3 * needed, tubs);
        CHECK(cost.used_range->low == Approx(40));
        CHECK(cost.used_range->high == Approx(40));
    }
}

// Kept mix is paid for: a gram more of it is never dearer, and where there is none over, fresh mix is made for the
// rest.
TEST_CASE("the more mix is kept, the less its cost reaches up, down to nothing beside what else is fed") {
    const Doubtful shelf(1);
    const Strategy strategy = session({cups("fishmeal mix", 250, 12)});
    const double needed = cost_of(shelf, strategy).unrolled.feeds[0].wet_mass.in(gram);
    double before = cost_of(shelf, strategy).used_range->high;
    for (const double share : {0.3, 0.9, 1.0001, 1.05, 1.2, 2.0}) {
        const double high = cost_with_kept(shelf, strategy, share * needed).used_range->high;
        CAPTURE(share);
        CHECK(high < before + 1e-9);
        CHECK(high >= 0);
        if (share < 1.01) CHECK(high > 0);
        before = high;
    }
    CHECK(before == 0);
}
