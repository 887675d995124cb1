#include "answers/strategy/kept_in_feeds.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "answers/money/cost_strategy.h"
#include "answers/plan/plan_session.h"
#include "answers/sessions.h"
#include "answers/strategy/unroll_strategy.h"
#include "day_of.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

KeptMix tub_of(const std::string& mix, double grams, const std::string& feel = {}) {
    KeptMix kept;
    kept.of = mix;
    kept.mass = grams * gram;
    kept.state = StockState::frozen;
    kept.feel = feel;
    return kept;
}

StrategyRequest with_tubs(std::vector<KeptMix> kept) {
    StrategyRequest request;
    request.kept = std::move(kept);
    return request;
}

double grams_to_weigh(const UnrolledStrategy& session, const std::string& name) {
    for (const IngredientNeed& need : session.totals)
        if (need.ingredient.name == name) return need.mass.in(gram);
    return 0;
}

double grams_kept(const UnrolledStrategy& session) {
    double sum = 0;
    for (const KeptUse& use : session.kept) sum += use.of.mass.in(gram);
    return sum;
}

/// A mix of 100 g of crumb: A 0.65 of its own water, so that the sums can be done by hand.
Recipe crumb_mix() {
    Recipe recipe;
    recipe.name = "crumb alone";
    recipe.feel = "firm";
    recipe.parts = {{"brown crumb", Share{1}}};
    return recipe;
}

const Shelf& crumb_shelf() {
    static const MemoryShelf* const shelf = [] {
        auto* made = new MemoryShelf(&bank());
        made->put(crumb_mix());
        return made;
    }();
    return *shelf;
}

/// What the unrolled session has of one mix, without what is kept.
struct Fresh {
    double dry, water;
};
Fresh fresh_of(const UnrolledStrategy& session) {
    return {session.dry.in(gram), session.water.in(gram)};
}

}  // namespace

// By hand: 1 g of dry mix with r g of water for it weighs 1 + r. So 300 g of it hold 300 / (1 + r) g dry and
// 300 r / (1 + r) g of water, and that much less is weighed and poured, whatever r is.
TEST_CASE("mix from the freezer at the same feel takes the place of as much fresh mix") {
    const Strategy strategy = session({cups("crumb alone", 250, 4)});
    const UnrolledStrategy bare = unroll_strategy(crumb_shelf(), strategy);
    const UnrolledStrategy found = unroll_strategy(crumb_shelf(), strategy, with_tubs({tub_of("crumb alone", 300)}));
    const double r = bare.water / bare.dry;
    CHECK(fresh_of(found).dry == Approx(bare.dry.in(gram)-300 / (1 + r)));
    CHECK(fresh_of(found).water == Approx(bare.water.in(gram)-300 * r / (1 + r)));
    CHECK(found.wet_mass.in(gram) == Approx(bare.wet_mass.in(gram)));  // as much is fed
    CHECK(found.put_ins.size() == bare.put_ins.size());
    CHECK(found.free_offerings == Approx(bare.free_offerings));
    REQUIRE(found.kept.size() == 1);
    CHECK(found.kept[0].of.feel == "firm");
    CHECK(std::abs(found.kept[0].more_water.in(gram)) < 1e-9);
}

// By the same sum: soaked pellets of 300 g hold the water that they keep, and were not weighed so dry.
TEST_CASE("soaked pellets from the freezer take the place of as many soaked ones") {
    MemoryShelf shelf(&bank());
    shelf.put(draft::micro_mix());
    Feed feeder = cups("micro mix", 45, 20);
    feeder.form = FeedForm::feeder;
    const Strategy strategy = session({feeder});
    const UnrolledStrategy bare = unroll_strategy(shelf, strategy);
    const UnrolledStrategy found = unroll_strategy(shelf, strategy, with_tubs({tub_of("micro mix", 300)}));
    const double r = bare.soak_water / bare.dry;
    CHECK(r > 0.2);
    CHECK(fresh_of(found).dry == Approx(bare.dry.in(gram)-300 / (1 + r)));
    CHECK(found.soak_water.in(gram) == Approx(bare.soak_water.in(gram)-300 * r / (1 + r)));
    CHECK(found.wet_mass.in(gram) == Approx(bare.wet_mass.in(gram)));
}

// What is wetter gives its water to the whole tub, which is wetted to the driest of its feels.
TEST_CASE("beside a drier feel, mix kept wetter goes only into what is as wet") {
    const Strategy two = session({cups("crumb alone", 250, 4, "soft"), cups("crumb alone", 250, 2, "firm")});
    const UnrolledStrategy found =
        unroll_strategy(crumb_shelf(), two, with_tubs({tub_of("crumb alone", 5000, "soft")}));
    REQUIRE(found.kept.size() == 1);
    CHECK(found.kept[0].fed_at == "soft");
    CHECK(found.kept[0].of.mass.in(gram) == Approx(found.feeds[0].wet_mass.in(gram)));
    CHECK(unroll_strategy(crumb_shelf(), two, with_tubs({tub_of("crumb alone", 5000, "slop")})).kept.empty());
    const Strategy one = session({cups("crumb alone", 250, 2, "firm")});
    CHECK_FALSE(unroll_strategy(crumb_shelf(), one, with_tubs({tub_of("crumb alone", 100, "soft")})).kept.empty());
}

// By hand: kept at 1.2 it holds r(firm) g of water a gram dry; at soft the same dry mix takes r(soft).
TEST_CASE("drier mix from the freezer takes the water that is lacking to the feel") {
    const Strategy firm = session({cups("crumb alone", 250, 4, "firm")});
    const Strategy soft = session({cups("crumb alone", 250, 4, "soft")});
    const UnrolledStrategy as_firm = unroll_strategy(crumb_shelf(), firm),
                           as_soft = unroll_strategy(crumb_shelf(), soft);
    const double dry = 300 / (1 + as_firm.water / as_firm.dry);
    const UnrolledStrategy found =
        unroll_strategy(crumb_shelf(), soft, with_tubs({tub_of("crumb alone", 300, "firm")}));
    REQUIRE(found.kept.size() == 1);
    CHECK(found.kept[0].dry.in(gram) == Approx(dry));
    CHECK(found.kept[0].more_water.in(gram) ==
          Approx(dry * (as_soft.water / as_soft.dry - as_firm.water / as_firm.dry)));
    CHECK(found.water.in(gram) == Approx(as_soft.water.in(gram)-dry * (as_firm.water / as_firm.dry)));
}

// By hand: all the water of the batch is r(firm) D; a gram of the tub holds r(slop) / (1 + r(slop)) of it.
TEST_CASE("wetter mix from the freezer is used only as far as the fresh mix takes its water up") {
    const UnrolledStrategy as_firm = unroll_strategy(crumb_shelf(), session({cups("crumb alone", 250, 4, "firm")}));
    const UnrolledStrategy as_slop = unroll_strategy(crumb_shelf(), session({cups("crumb alone", 250, 4, "slop")}));
    const double r = as_slop.water / as_slop.dry;
    const UnrolledStrategy found = unroll_strategy(crumb_shelf(), session({cups("crumb alone", 250, 4, "firm")}),
                                                   with_tubs({tub_of("crumb alone", 9000, "slop")}));
    CHECK(grams_kept(found) == Approx(as_firm.water.in(gram) * (1 + r) / r));
    CHECK(fresh_of(found).water == Approx(0).margin(1e-6));
    CHECK(fresh_of(found).dry > 0);
}

TEST_CASE("kept mix is used no further than it is fed, and then nothing is weighed") {
    const Strategy strategy = session({cups("fishmeal mix", 250, 4)});
    const UnrolledStrategy bare = unroll_strategy(bank(), strategy);
    const UnrolledStrategy found = unroll_strategy(bank(), strategy, with_tubs({tub_of("Fishmeal  mix", 90000)}));
    CHECK(grams_kept(found) == Approx(bare.wet_mass.in(gram)));
    CHECK(found.dry.in(gram) == 0);
    CHECK(found.water.in(gram) == 0);
    for (const IngredientNeed& need : found.totals) CHECK(need.mass.in(gram) == 0);
}

TEST_CASE("the tub that expires first is used first, and one past its best is not") {
    KeptMix late = tub_of("crumb alone", 200), early = tub_of("crumb alone", 100), gone = tub_of("crumb alone", 100);
    late.best_before = day_of("2027-02-01");
    early.best_before = day_of("2026-12-01");
    gone.best_before = day_of("2026-11-20");
    StockOnHand stock;
    for (const KeptMix& tub : {late, gone, early}) stock.put(tub);
    const Strategy strategy = session({cups("crumb alone", 100, 2)});
    const UnrolledStrategy found =
        unroll_strategy(crumb_shelf(), strategy, with_kept({}, strategy, stock, day_of("2026-11-28")));
    REQUIRE(found.kept.size() == 2);
    CHECK(found.kept[0].of.best_before == day_of("2026-12-01"));
    CHECK(found.kept[0].of.mass.in(gram) == Approx(100));
    CHECK(found.kept[1].of.best_before == day_of("2027-02-01"));
    KeptMix not_yet = tub_of("crumb alone", 100);
    not_yet.kept_on = day_of("2026-12-03");
    StrategyRequest before = with_tubs({not_yet});
    before.on = day_of("2026-11-28");
    CHECK(unroll_strategy(crumb_shelf(), strategy, before).kept.empty());
}

TEST_CASE("mix is used in a feed of it alone before one where it is a part, and no more than its part") {
    Feed both = cups("x", 250, 2);
    both.parts = {{"crumb alone", 4}, {"casters", 1}};
    const Strategy strategy = session({both, cups("crumb alone", 250, 2)});
    const UnrolledStrategy bare = unroll_strategy(crumb_shelf(), strategy);
    const double alone = bare.feeds[1].wet_mass.in(gram);
    const UnrolledStrategy little =
        unroll_strategy(crumb_shelf(), strategy, with_tubs({tub_of("crumb alone", 0.5 * alone)}));
    CHECK(little.feeds[0].kept.empty());
    CHECK(little.feeds[1].dry.in(gram) == Approx(0.5 * bare.feeds[1].dry.in(gram)));
    const UnrolledStrategy much = unroll_strategy(crumb_shelf(), strategy, with_tubs({tub_of("crumb alone", 90000)}));
    CHECK(much.feeds[1].dry.in(gram) == 0);
    CHECK(much.feeds[0].kept.size() == 1);
    CHECK(grams_to_weigh(much, "casters") == Approx(grams_to_weigh(bare, "casters")));
    CHECK(grams_to_weigh(much, "brown crumb") >= 0);
}

TEST_CASE("mix that holds what is left out for once is not used") {
    const Strategy strategy = session({cups("fishmeal mix", 250, 4), cups("maggots", 50, 1)});
    StrategyRequest request = with_tubs({tub_of("fishmeal mix", 400)});
    request.without = {"maize meal"};
    CHECK(unroll_strategy(bank(), strategy, request).kept.empty());
    request.without = {"maggots"};
    CHECK(unroll_strategy(bank(), strategy, request).kept.size() == 1);
}

// By hand: a session feeds W. The tub holds 1.5 W and is good for the first two sessions, a week apart: all of the
// first and half of the second come out of it; with half of each session's mix frozen for the next, the second makes
// W / 2 only, and that is what the tub's rest does.
TEST_CASE("several sessions use a tub while it is good, beside what they freeze for each other") {
    const Strategy strategy = session({cups("crumb alone", 250, 4)});
    const UnrolledStrategy one = unroll_strategy(crumb_shelf(), strategy);
    const double each = one.wet_mass.in(gram), dry = one.dry.in(gram);
    KeptMix tub = tub_of("crumb alone", 1.5 * each);
    tub.best_before = day_of("2026-12-06");
    StrategyRequest request = with_tubs({tub});
    request.on = day_of("2026-11-28");
    request.times = 3;
    CHECK(unroll_strategy(crumb_shelf(), strategy, request).dry.in(gram) == Approx(1.5 * dry));
    request.kept[0].best_before = day_of("2026-12-04");
    CHECK(unroll_strategy(crumb_shelf(), strategy, request).dry.in(gram) == Approx(2 * dry));
    request.kept[0].best_before = day_of("2026-12-06");
    request.reused = 0.5;
    CHECK(unroll_strategy(crumb_shelf(), strategy, request).dry.in(gram) == Approx(0.5 * dry));
}

TEST_CASE("frozen mix used is neither bought nor weighed again, and nothing falls below nothing") {
    CHECK(rc::check([] {
        MemoryShelf shelf(&bank());
        const Strategy strategy = any_session(shelf);
        const std::vector<std::string> feels{"", "crumbly", "firm", "tacky", "soft", "slop"};
        StrategyRequest request;
        request.people = *rc::gen::inRange(1, 4);
        request.times = *rc::gen::inRange(1, 4);
        if (request.times > 1) request.reused = draft::drawn(0, 50, 0.01);
        const UnrolledStrategy bare = unroll_strategy(shelf, strategy, request);
        for (const Feed& feed : strategy.feeds)
            for (const FeedPart& part : feed.parts)
                if (shelf.find_recipe(part.of) && *rc::gen::arbitrary<bool>())
                    request.kept.push_back(tub_of(part.of, draft::drawn(1, 4000, 1), *rc::gen::elementOf(feels)));
        const UnrolledStrategy found = unroll_strategy(shelf, strategy, request);
        const auto near = [](double a, double b) { return std::abs(a - b) <= 1e-3 + 1e-9 * std::abs(b); };
        double dry = 0, water = 0, soaked = 0, kept = 0, lying = 0;
        for (const KeptUse& use : found.kept) {
            RC_ASSERT(use.of.mass <= (1 + 1e-9) * request.kept[use.place].mass);
            dry += use.dry.in(gram);
            water += use.water.in(gram);
            soaked += use.soak_water.in(gram);
            kept += use.of.mass.in(gram);
        }
        RC_ASSERT(near(found.dry.in(gram) + dry, bare.dry.in(gram)));
        RC_ASSERT(near(found.water.in(gram) + water, bare.water.in(gram)));
        RC_ASSERT(near(found.soak_water.in(gram) + soaked, bare.soak_water.in(gram)));
        RC_ASSERT(found.totals.size() == bare.totals.size());
        for (std::size_t i = 0; i < bare.totals.size(); ++i) {
            const IngredientNeed& need = found.totals[i];
            RC_ASSERT(need.mass >= Mass{} && need.soaked >= Mass{});
            RC_ASSERT(near((need.mass + need.kept).in(gram), bare.totals[i].mass.in(gram)));
            lying += need.kept.in(gram);
        }
        RC_ASSERT(near(kept, lying + water + soaked));  // the tubs are what was weighed and poured, and no more
        RC_ASSERT(near(found.wet_mass.in(gram), bare.wet_mass.in(gram)));
        for (const FeedNeed& feed : found.feeds) RC_ASSERT(feed.dry >= Mass{} && feed.water >= Mass{});
    }));
}

TEST_CASE("with mix from the freezer a session never costs more") {
    MemoryShelf shelf(&crumb_shelf());
    Ingredient crumb = shelf.ingredient("brown crumb");
    crumb.packs = {{1000.0 * gram, parse_money("£2.10"), day_of("2026-10-01"), "the mill"}};
    shelf.put(crumb);
    const Strategy strategy = session({cups("crumb alone", 250, 4)});
    std::int64_t used = cost_strategy(shelf, strategy, {}, {}).used_minor;
    CHECK(used > 0);
    for (const double grams : {100.0, 300.0, 700.0, 5000.0}) {
        StockOnHand stock;
        stock.put(tub_of("crumb alone", grams));
        const StrategyCost cost = cost_strategy(shelf, strategy, stock, {});
        CHECK(cost.used_minor <= used);
        CHECK(cost.complete());
        used = cost.used_minor;
    }
    CHECK(used == 0);
}

TEST_CASE("a plan takes frozen mix out the evening before and carries only the water that is still to add") {
    const Strategy strategy = session({cups("fishmeal mix", 250, 4, "soft")});
    PlanRequest request;
    request.start = 9 * 60;
    const SessionPlan bare = plan_session(bank(), strategy, {}, request);
    StockOnHand stock;
    stock.put(tub_of("fishmeal mix", 400, "firm"));
    const SessionPlan plan = plan_session(bank(), strategy, stock, request);
    REQUIRE(plan.prep.front().task == PrepTask::thaw);
    CHECK(plan.prep.front().when == PrepJob::When::evening_before);
    CHECK(plan.prep.front().amount.in(gram) == Approx(400));
    REQUIRE(plan.kept.size() == 1);
    CHECK(plan.water_to_carry.in(gram) == Approx((bare.water_to_carry - plan.kept[0].water).in(gram)));
    CHECK(plan.wet_mass.in(gram) == Approx(bare.wet_mass.in(gram)));
    CHECK(plan.batches[0].water_range.high < bare.batches[0].water_range.high);
    StockOnHand plenty;
    plenty.put(tub_of("fishmeal mix", 9000, "soft"));
    const SessionPlan thawed = plan_session(bank(), strategy, plenty, request);
    CHECK(thawed.water_to_carry.in(gram) == 0);
    CHECK(thawed.totals.empty());
    CHECK(thawed.batches[0].parts.empty());
    for (const PrepJob& job : thawed.prep) CHECK((job.task != PrepTask::weigh && job.task != PrepTask::first_wetting));
}

TEST_CASE("with kept mix and feeds at two feels all the water that is carried is stirred in, and only that") {
    const Strategy strategy =
        session({cups("fishmeal mix", 250, 2, "firm"), cups("fishmeal mix", 250, 2, "soft")}, 0.1);
    const SessionPlan bare = plan_session(bank(), strategy, {}, {});
    for (const double grams : {200.0, 600.0, 1100.0, 9000.0})
        for (const char* feel : {"crumbly", "firm", "soft", "slop"}) {
            INFO(grams << " g at " << feel);
            StockOnHand stock;
            stock.put(tub_of("fishmeal mix", grams, feel));
            const SessionPlan plan = plan_session(bank(), strategy, stock, {});
            REQUIRE(plan.batches.size() == 1);
            const PlannedBatch& batch = plan.batches[0];
            double stirred = 0, kept = 0;
            for (const PrepJob& job : plan.prep)
                if (job.task == PrepTask::first_wetting || job.task == PrepTask::second_wetting ||
                    job.task == PrepTask::let_down)
                    stirred += job.amount.in(gram);
            for (const KeptUse& use : plan.kept) kept += use.water.in(gram);
            CHECK(stirred == Approx(plan.water_to_carry.in(gram)).margin(1));
            CHECK(stirred + kept == Approx(bare.water_to_carry.in(gram)).margin(1));
            CHECK(batch.wet_mass.in(gram) == Approx(bare.batches[0].wet_mass.in(gram)));
            CHECK(batch.water_first >= Mass{});
            CHECK(batch.water_rest >= Mass{});
            for (const LetDown& wetter : batch.let_downs) CHECK(wetter.take > Mass{});
        }
}
