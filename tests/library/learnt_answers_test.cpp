// Answers that have more than one mix in them, with a log's teaching in them.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "answers/learn/learn_from_log.h"
#include "answers/money/cost_strategy.h"
#include "answers/plan/plan_session.h"
#include "library/open_library.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

/// The shipped shelf with every bag that takes water learnt at its own medians, three times as sure as it was.
struct SurerShelf {
    std::unique_ptr<MemoryShelf> shipped = shipped_shelf();
    MemoryShelf shelf{shipped.get()};

    SurerShelf() {
        LearntWater learnt;
        std::vector<Ingredient> bags;
        for (const std::string& name : shipped->ingredient_names())
            if (Ingredient one_bag = shipped->ingredient(name); takes_water(one_bag.kind)) bags.push_back(one_bag);
        learnt.rank = 2 + 2 * bags.size();
        learnt.factor.assign(learnt.rank * learnt.rank, 0.0);
        learnt.factor[0] = 0.02;
        for (std::size_t i = 0; i < bags.size(); ++i) {
            Ingredient& bag = bags[i];
            learnt.bags.push_back(
                {bag.name, std::log(bag.absorption.value), std::log(bag.slump.value - bag.absorption.value), 5});
            for (const std::size_t row : {LearntWater::absorption(i), LearntWater::gap(i)}) {
                learnt.factor[row * learnt.rank] = 0.02;
                learnt.factor[row * learnt.rank + row] = 0.04;
            }
            bag.absorption.source = bag.slump.source = {Origin::learned, "5 mixes"};
            shelf.put(bag);
        }
        shelf.put(learnt);
    }
};

double width_of_range(const Range<double>& range) {
    return range.high / range.low;
}

}  // namespace

TEST_CASE("a plan says once that its water is by the person's own mixes, and pours for medians that are the same") {
    const SurerShelf surer;
    const Strategy strategy = surer.shipped->strategy("open carpet");
    const SessionPlan plan = plan_session(surer.shelf, strategy, {}, {}),
                      before = plan_session(*surer.shipped, strategy, {}, {});
    const auto learnt = [](const Warning& warning) { return warning.code == "learnt"; };
    CHECK(std::count_if(plan.warnings.begin(), plan.warnings.end(), learnt) == 1);
    CHECK(std::count_if(before.warnings.begin(), before.warnings.end(), learnt) == 0);
    CHECK(plan.learnt.bags.size() >= 3);
    REQUIRE(plan.batches.size() == before.batches.size());
    for (std::size_t i = 0; i < plan.batches.size(); ++i) {
        CHECK(plan.batches[i].water.si() == Approx(before.batches[i].water.si()).epsilon(1e-9));
        if (!(plan.batches[i].water_range.high > Mass{})) continue;
        CHECK(plan.batches[i].water_range.high < before.batches[i].water_range.high);
        CHECK(plan.batches[i].water_range.low > before.batches[i].water_range.low);
    }
}

TEST_CASE("the range of what a session costs is drawn by what was learnt of all its mixes together") {
    const SurerShelf surer;
    const Strategy strategy = surer.shipped->strategy("open carpet");
    const StrategyCost cost = cost_strategy(surer.shelf, strategy, {}, {}),
                       before = cost_strategy(*surer.shipped, strategy, {}, {});
    REQUIRE(cost.used_range);
    REQUIRE(before.used_range);
    CHECK(cost.used_range->middle == Approx(before.used_range->middle).epsilon(0.02));
    CHECK(width_of_range(*cost.used_range) < 1.02 * width_of_range(*before.used_range));
    CHECK(cost.used_range->low < cost.used_range->high);
}

TEST_CASE("what was learnt of a mix and is heeded is not learnt a second time") {
    const auto shipped = shipped_shelf();
    LearnRequest request;
    request.today = parse_date("2026-11-25");
    LoggedWeight cup{"silt bed", "soft", 250.0 * millilitre, 300.0 * gram};
    LoggedLook look;
    look.of = "silt bed";
    look.feel = "soft";
    look.form = 250.0 * millilitre;
    look.depth = 2.0 * metre;
    look.breaks_at = 0.9 * metre;
    look.carpet = 1.4 * metre;
    request.log = {{1, request.today, 0, cup}, {2, request.today, 0, look}};
    const LearnAnswer first = learn_from_log(*shipped, request);
    REQUIRE(first.learnt_mixes.size() == 1);
    MemoryShelf heeding(shipped.get());
    heeding.put(first.learnt_mixes[0]);
    const LearnAnswer again = learn_from_log(heeding, request);
    REQUIRE(again.learnt_mixes.size() == 1);
    const auto same = [&](std::optional<LearntFactor> LearntMix::*factor) {
        REQUIRE((first.learnt_mixes[0].*factor).has_value());
        CHECK((again.learnt_mixes[0].*factor)->mean == Approx((first.learnt_mixes[0].*factor)->mean).epsilon(1e-12));
    };
    same(&LearntMix::cup_weight);
    same(&LearntMix::hold);
    same(&LearntMix::carpet);
}
