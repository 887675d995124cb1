#include "answers/plan/plan_session.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <functional>

#include "answers/plan/rest_of_session.h"
#include "answers/plan/venue_breaches.h"
#include "answers/sessions.h"
#include "answers/soaking.h"
#include "day_of.h"
#include "quantities/fault_of.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

/// The bank with an expander that can be pumped.
class PlanBank : public Bank {
public:
    PlanBank() { put(draft::expander("expander 4 mm", 4)); }
};

const PlanBank& plan_bank() {
    static const PlanBank shelf;
    return shelf;
}

SessionPlan planned(const Strategy& strategy, const PlanRequest& request = {}, const Shelf& shelf = plan_bank()) {
    return plan_session(shelf, strategy, {}, request);
}

Feed fed(FeedTiming when, FeedForm form, FeedSize size, std::vector<FeedPart> parts, int count = 1) {
    return {when, std::move(parts), form, size, count, {}};
}

const Feed soaked_pots = fed({EveryPutIn{}, 5.0 * minute, {}}, FeedForm::pot, 25.0 * millilitre,
                             {{"fishmeal micro pellet 2 mm", 1, Preparation::soaked}});

const PrepJob* job_of(const SessionPlan& plan, PrepTask task, const std::string& subject) {
    for (const PrepJob& job : plan.prep)
        for (const PrepPortion& portion : job.portions)
            if (job.task == task && portion.of == subject) return &job;
    return nullptr;
}

double grams(const std::vector<PlannedTotal>& totals, const std::string& name) {
    double sum = 0;
    for (const PlannedTotal& total : totals)
        if (total.name == name) sum += total.mass.in(gram);
    return sum;
}

bool warns(const SessionPlan& plan, const std::string& code) {
    return std::any_of(plan.warnings.begin(), plan.warnings.end(), [&](const Warning& w) { return w.code == code; });
}

PlanRequest with_kit(std::initializer_list<const char*> items) {
    PlanRequest request;
    for (const char* item : items) request.kit.push_back(parse_kit(item));
    return request;
}

constexpr double hair = 1e-6;  // minutes

bool takes_soaked(const PlannedBatch& batch, const std::string& pellet) {
    return std::any_of(batch.parts.begin(), batch.parts.end(),
                       [&](const PlannedTotal& part) { return part.name == pellet && part.soaked > Mass{}; });
}

double mass_of_hooks(const SessionPlan& plan) {
    double sum = 0;
    for (const HookbaitNeed& hook : plan.hookbaits) sum += hook.mass.in(gram);
    return sum;
}

/// RapidCheck stops at a failure and shows how the case was drawn.
void for_any_plan(const std::function<void(const Strategy&, const SessionPlan&, const PlanRequest&)>& look) {
    CHECK(rc::check([&] {
        MemoryShelf shelf(&plan_bank());
        const Strategy strategy = any_session(shelf);
        PlanRequest request;
        request.cost.what_if.people = *rc::gen::inRange(1, 5);
        if (*rc::gen::arbitrary<bool>()) request.start = *rc::gen::inRange(0, 24 * 60);
        if (*rc::gen::arbitrary<bool>()) request.work_from = 48.0 * hour;
        request.water = Temperature::from_celsius(*rc::gen::inRange(2, 31));
        std::optional<SessionPlan> plan;
        try {
            plan = planned(strategy, request, shelf);
        } catch (const Error& error) {
            RC_PRE(error.faults().front().code != "no-time");  // more work than there are hours before the start
            throw;
        }
        look(strategy, *plan, request);
    }));
}

}  // namespace

TEST_CASE("in any plan every feed goes in as often as it is due, and none at or after the end") {
    for_any_plan([](const Strategy&, const SessionPlan& plan, const PlanRequest&) {
        std::vector<std::size_t> met(plan.feeds.size());
        for (const PlannedFeed& put_in : plan.put_ins) {
            RC_ASSERT(put_in.at >= Time{});
            RC_ASSERT(put_in.at < plan.length);
            ++met[put_in.feed];
        }
        for (std::size_t i = 0; i < met.size(); ++i) {
            RC_ASSERT(met[i] > 0U);
            RC_ASSERT(met[i] == plan.feeds[i].put_ins);
        }
    });
}

TEST_CASE("in any plan one pair of hands does one thing at a time, and all before the start") {
    for_any_plan([](const Strategy&, const SessionPlan& plan, const PlanRequest&) {
        double hands = 0;
        for (std::size_t i = 0; i < plan.prep.size(); ++i) {
            const PrepJob& job = plan.prep[i];
            const double end = (job.at + job.hands_on).in(minute);
            RC_ASSERT(job.hands_on > Time{});
            RC_ASSERT(end <= (i + 1 < plan.prep.size() ? plan.prep[i + 1].at.in(minute) : 0) + hair);
            hands += job.hands_on.in(minute);
        }
        RC_ASSERT(std::abs(hands - plan.hands_on.in(minute)) < 1e-6);
        RC_ASSERT(plan.prep.back().task == PrepTask::load);
    });
}

TEST_CASE("in any plan a soak has ended and stood before what takes it is wetted, and each wetting waits its rest") {
    for_any_plan([](const Strategy&, const SessionPlan& plan, const PlanRequest&) {
        const double loaded = plan.prep.back().at.in(minute);
        for (const PlannedSoak& soak : plan.soaks) {
            if (soak.for_the_hook) continue;
            const PrepJob *poured = job_of(plan, PrepTask::pour_on, soak.name),
                          *drained = job_of(plan, PrepTask::drain, soak.name);
            RC_ASSERT(poured && drained);
            RC_ASSERT((drained->at - poured->at).in(minute) >= soak.soak.in(minute)-hair);
            const double ready = (drained->at + drained->hands_on + soak.stand).in(minute);
            RC_ASSERT(ready <= loaded + hair);
            for (const PlannedBatch& batch : plan.batches)
                if (takes_soaked(batch, soak.name) && !batch.feel.empty())
                    RC_ASSERT(ready <= job_of(plan, PrepTask::first_wetting, batch.name)->at.in(minute) + hair);
        }
        for (const PlannedBatch& batch : plan.batches) {
            if (batch.feel.empty()) continue;
            const PrepJob *first = job_of(plan, PrepTask::first_wetting, batch.name),
                          *riddled = job_of(plan, PrepTask::riddle, batch.name),
                          *second = job_of(plan, PrepTask::second_wetting, batch.name);
            RC_ASSERT(first && riddled && second);
            RC_ASSERT((first->at + first->hands_on + batch.rest).in(minute) <= riddled->at.in(minute) + hair);
            RC_ASSERT((riddled->at + riddled->hands_on).in(minute) <= second->at.in(minute) + hair);
        }
    });
}

TEST_CASE("in any plan put-ins, batches, parts and totals come to the same to a gram, nothing counted twice") {
    for_any_plan([](const Strategy& strategy, const SessionPlan& plan, const PlanRequest&) {
        double of_put_ins = 0, of_batches = 0, parts = 0, totals = 0, first = 0, water = 0;
        for (const PlannedFeed& put_in : plan.put_ins) of_put_ins += put_in.mass.in(gram);
        of_put_ins *= plan.people * (1 + double(strategy.spare));
        for (const PlannedBatch& batch : plan.batches) {
            of_batches += batch.wet_mass.in(gram);
            for (const PlannedTotal& part : batch.parts) parts += part.mass.in(gram);
            first += (batch.water_first + batch.water_rest).in(gram);
            water += batch.water.in(gram);
            RC_ASSERT(batch.water_first >= Mass{});
            RC_ASSERT(batch.wet_mass.in(kilogram) <= 5.0 * batch.containers + 1e-6);
        }
        for (const PlannedTotal& total : plan.totals) totals += total.mass.in(gram);
        RC_ASSERT(std::abs(of_put_ins - of_batches) < 1);
        RC_ASSERT(std::abs(of_batches - plan.wet_mass.in(gram)) < 1);
        RC_ASSERT(std::abs(totals - parts - mass_of_hooks(plan)) < 1);
        RC_ASSERT(std::abs(first - water) < 1);
    });
}

TEST_CASE("what lies in the swim grows by the half hour to the grains of one angler, the spare left out") {
    Strategy strategy = session({soaked_pots}, 0.1);
    strategy.pace.put_ins_per_hour = 12;
    const SessionPlan plan = planned(strategy);
    REQUIRE(plan.in_the_swim.size() == 11);
    CHECK(plan.in_the_swim.front().grains == 0);
    // 5, 10, ... 30 min are six pots, and 59 in all before the end of five hours
    CHECK(plan.in_the_swim[1].mass.in(gram) == Approx(6 * plan.put_ins[0].mass.in(gram)));
    CHECK(plan.in_the_swim.back().mass.in(gram) == Approx(59 * plan.put_ins[0].mass.in(gram)));
    CHECK(plan.in_the_swim.back().grains == Approx(plan.cost.unrolled.free_offerings / 1.1));
}

TEST_CASE("pumping and weighing are for the evening before, at nine by the clock, unless the work begins on the day") {
    Strategy strategy = session({cups("fishmeal mix", 250, 2, "soft")}, 0.1);
    strategy.hookbaits = {{"expander 4 mm", BitesPerHour{12}}};
    PlanRequest request;
    request.start = 9 * 60 + 30;
    const SessionPlan plan = planned(strategy, request);
    const PrepJob *pump = job_of(plan, PrepTask::pump, "expander 4 mm"),
                  *weigh = job_of(plan, PrepTask::weigh, "fishmeal mix");
    REQUIRE((pump && weigh));
    CHECK((pump->when == PrepJob::When::evening_before && weigh->when == PrepJob::When::evening_before));
    CHECK(std::max(pump->at + pump->hands_on, weigh->at + weigh->hands_on).in(minute) == Approx(-750));  // 21:00
    request.work_from = 3.0 * hour;
    const SessionPlan rushed = planned(strategy, request);
    CHECK(rushed.prep.front().at.in(minute) >= -180);
    for (const PrepJob& job : rushed.prep) CHECK(job.when == PrepJob::When::on_the_day);
}

TEST_CASE("a start that leaves no time is refused, with what to soften and when it would do") {
    PlanRequest request;
    request.start = 9 * 60 + 30;
    request.work_from = 15.0 * minute;
    try {
        planned(session({cups("fishmeal mix", 250, 2, "soft")}), request);
        FAIL("it was planned");
    } catch (const Error& error) {
        CHECK(error.fault_class() == FaultClass::answer_is_no);
        CHECK(error.faults().front().code == "no-time");
        CHECK_THAT(error.faults().front().message, Catch::Contains("only 15 min"));
        CHECK_THAT(error.faults().front().hint, Catch::StartsWith("begin 55 min before the start, at 08:35; or ") &&
                                                    Catch::Contains("wet the mix to half at home"));
    }
    request.work_from = 55.0 * minute;
    CHECK_NOTHROW(planned(session({cups("fishmeal mix", 250, 2, "soft")}), request));
}

TEST_CASE("where the work begins by the clock, a later start is as good, and the one that is told does") {
    PlanRequest request;
    request.start = 9 * 60 + 30;
    request.work_from = 15.0 * minute;
    request.work_from_clock = true;
    const Strategy strategy = session({cups("fishmeal mix", 250, 2, "soft")});
    CHECK_THAT(fault_of([&] { planned(strategy, request); }).hint,
               Catch::StartsWith("begin earlier, or start at 10:10"));
    request.start = 10 * 60 + 10;
    request.work_from = 55.0 * minute;
    CHECK_NOTHROW(planned(strategy, request));
}

TEST_CASE("a cup that the kit lacks is filled from a smaller one several times, and no cup at all is a no") {
    const Strategy strategy = session({cups("fishmeal mix", 250, 3, "soft")});
    const SessionPlan fits = planned(strategy, with_kit({"cup 500", "cup 250"}));
    CHECK((fits.put_ins[0].with == "cup 250" && fits.put_ins[0].fills == 3));
    CHECK(fits.warnings.size() == planned(strategy).warnings.size());
    const SessionPlan small = planned(strategy, with_kit({"cup 100"}));
    CHECK((small.put_ins[0].with == "cup 100" && small.put_ins[0].fills == 9));
    CHECK(warns(small, "kit-too-small"));
    const SessionPlan none = planned(strategy, with_kit({"toss pot 25"}));
    CHECK(warns(none, "kit-lacks"));
    CHECK(std::any_of(none.warnings.begin(), none.warnings.end(), [](const Warning& w) { return w.answer_is_no; }));
    CHECK(warns(planned(strategy, with_kit({"cup 250", "tub 0.5 l"})), "kit-too-small"));
}

TEST_CASE("kit is read with its size, and what is none is told") {
    CHECK(parse_kit("cup 250").size.in(millilitre) == Approx(250));
    CHECK(parse_kit("Toss  Pot 25").kind == KitItem::Kind::pot);
    CHECK(parse_kit("tub 12 l").size.in(litre) == Approx(12));
    CHECK(parse_kit("pot 0.5 pt").size.in(imperial_pint) == Approx(0.5));
    CHECK_THAT(fault_of([] { parse_kit("cupp 250"); }).hint, Catch::Contains("cup"));
    CHECK(fault_of([] { parse_kit("rake 3"); }).code == "unknown-kit");
    CHECK(fault_of([] { parse_kit("cup"); }).code == "no-size");
    CHECK(fault_of([] { parse_kit("cup 300 g"); }).code == "wrong-dimension");
    CHECK(fault_of([] { parse_kit("tub 900 l"); }).code == "out-of-range");
}

namespace {

/// Everything at £2 a kilo, but the maize meal, whose price nobody knows.
class PricedPlanBank : public PlanBank {
public:
    PricedPlanBank() {
        for (const char* name : {"fishmeal, brown", "brown crumb", "ground fishmeal pellet",
                                 "fishmeal micro pellet 2 mm", "sweet liquid", "expander 4 mm"}) {
            Ingredient one = ingredient(name);
            one.packs = {{1.0 * kilogram, parse_money("£2.00"), day_of("2026-11-01"), ""}};
            put(one);
        }
    }
};

Strategy messy() {
    Strategy strategy = session(
        {cups("fishmeal mix", 250, 2, "soft"),
         fed(at_start, FeedForm::ball, 45.0 * millimetre, {{"fishmeal micro pellet 2 mm"}}, 2), soaked_pots,
         fed({EveryTime{20.0 * minute}, 60.0 * minute, {}}, FeedForm::cup, 250.0 * millilitre, {{"fishmeal mix"}})},
        0.1);
    strategy.feeds.back().feel = "soft";
    strategy.water.temperature = Temperature::from_celsius(30);
    strategy.pace.put_ins_per_hour = 12;
    strategy.hookbaits = {{"expander 4 mm", BitesPerHour{12}}};
    return strategy;
}

}  // namespace

// By hand: two opening cups and twelve top-ups (60, 80, ... 280 min) are 14 cups of one mix; the pots go in at 5, 10,
// ... 295 min, 59 of them. The first session makes all of it; of two sessions with half frozen, mix is made 1.5 times.
TEST_CASE("five hours with mess") {
    const PricedPlanBank shelf;
    PlanRequest request;
    request.start = 9 * 60 + 30;
    request.cost.on = day_of("2026-11-25");
    request.cost.what_if.people = 4;
    request.cost.what_if.times = 2;
    request.cost.what_if.reused = 0.5;
    Venue venue{"the pit", {}, {{Groundbait{}, 2.0 * kilogram}}, {}, {}};
    request.venue = venue;
    const SessionPlan plan = planned(messy(), request, shelf);
    CHECK(plan.put_ins.size() == 1 + 1 + 59 + 12);
    CHECK(plan.water.in_celsius() == Approx(30));

    // one tub for the opening cups and the top-ups, one of soaked pellets for the balls and the pots
    REQUIRE(plan.batches.size() == 2);
    CHECK(plan.batches[1].feeds == std::vector<std::size_t>{1, 2});
    const PlannedBatch& mix = plan.batches[0];
    CHECK(mix.feeds == std::vector<std::size_t>{0, 3});
    const FedPerDry each = per_dry(plan.cost.unrolled.feeds[0].fed, numbers_of(plan.cost.unrolled.feeds[0].fed.mix));
    const double cup = (250.0 * millilitre / each.wet_volume).in(gram);  // dry
    CHECK(mix.dry.in(gram) == Approx(14 * cup * 4 * 1.1));
    CHECK(grams(plan.totals, "brown crumb") == Approx(0.3 * mix.dry.in(gram)));
    CHECK(grams(plan.totals, "sweet liquid") == Approx(0.025 * 1.05 * mix.dry.in(gram)));

    // pay: the damp mix 1.5 times, the pellets twice; the maize is left out of the sum and named
    for (const CostLine& line : plan.cost.lines) {
        if (line.name == "brown crumb") CHECK(line.need.in(gram) == Approx(1.5 * 0.3 * mix.dry.in(gram)));
        if (line.name == "fishmeal micro pellet 2 mm")
            CHECK(line.need.in(gram) == Approx(2 * plan.batches[1].dry.in(gram)));
    }
    CHECK(plan.cost.unpriced == std::vector<std::string>{"maize meal"});
    double used = 0;
    for (const CostLine& line : plan.cost.lines)
        if (line.name != "maize meal") used += 0.2 * line.need.in(gram);  // pence at £2 a kilo
    CHECK(std::abs(static_cast<double>(plan.cost.used_minor) - used) <= 1);

    // the limit is of one angler's day, not of four or of two sessions
    REQUIRE(plan.breaches.size() == 1);
    const double planned_grams = std::get<Mass>(plan.breaches[0].planned).in(gram);
    CHECK(planned_grams == Approx(14 * cup * (1 + 0.025 * 1.05) * 1.1));  // pellets are no groundbait
    CHECK(planned_grams > 2000);
    CHECK_THAT(plan.breaches[0].rule, Catch::Contains("at most 2 kg of groundbait"));

    // the clock: pellets soak for minutes at 30 degC, the mix rests, and nothing is left for after the start
    const PrepJob *poured = job_of(plan, PrepTask::pour_on, "fishmeal micro pellet 2 mm"),
                  *wetted = job_of(plan, PrepTask::first_wetting, "fishmeal mix");
    REQUIRE((poured && wetted && job_of(plan, PrepTask::pump, "expander 4 mm")));
    CHECK(plan.begin.in(minute) <= std::min(poured->at, wetted->at).in(minute));
    CHECK(plan.prep.back().at.in(minute) == Approx(-10));
    CHECK(plan.soaks[0].dry.in(gram) == Approx(plan.batches[1].dry.in(gram)));
}

TEST_CASE("rules hold kinds, ingredients and volumes, each angler's or all of them, and bans name what is fed") {
    Venue venue;
    venue.limits = {
        {IngredientKind::pellet, 1.0 * gram},
        {OneIngredient{"Sweetcorn"}, 1.0 * gram},
        {AllFeed{}, 100.0 * litre, VenueLimit::Reckoned::wet},
        {OneIngredient{"brown crumb"}, 1.0 * millilitre, VenueLimit::Reckoned::dry, VenueLimit::Per::everyone}};
    venue.bans = {{IngredientKind::soil, "it silts the pit up"}, {IngredientKind::base, ""}};
    const UnrolledStrategy one = unroll_strategy(plan_bank(), session({cups("fishmeal mix", 250, 1, "soft")}));
    const std::vector<PlanBreach> found = venue_breaches(venue, one, 3);
    REQUIRE(found.size() == 2);  // no pellet, no sweetcorn, less than 100 l, no soil
    CHECK(found[0].subject == "brown crumb");
    CHECK(std::get<Volume>(found[0].planned).in(millilitre) == Approx(3 * one.dry.in(gram)*0.3 / 0.42));
    CHECK((found[1].subject == "base" && !found[1].limit));
    PlanRequest request;
    request.venue = Venue{"pit", {}, {{OneIngredient{"sweetcron"}, 1.0 * gram}}, {}, {}};
    CHECK_THAT(fault_of([&] { planned(session({cups("fishmeal mix", 250, 1)}), request); }).hint,
               Catch::Contains("sweetcorn"));
}

TEST_CASE("what is reckoned with once in two sessions, or just once, is kept for slow bites all the same") {
    for (const double times : {0.5, 1.0}) {
        CAPTURE(times);
        const SessionPlan plan = planned(session(
            {fed(at_start, FeedForm::cup, 250.0 * millilitre, {{"fishmeal mix"}}),
             fed({WhenSlow{times}, 60.0 * minute, {}}, FeedForm::cup, 250.0 * millilitre, {{"fishmeal mix"}})}));
        REQUIRE(plan.slow.size() == 1);
        CHECK(plan.slow[0].times == times);
    }
}

TEST_CASE("what is kept for slow bites is made with the rest, stands apart, and is called for when they are slow") {
    Strategy strategy = session(
        {fed(at_start, FeedForm::cup, 250.0 * millilitre, {{"fishmeal mix"}}),
         fed({WhenSlow{3}, 60.0 * minute, 240.0 * minute}, FeedForm::ball, 45.0 * millimetre, {{"fishmeal mix"}}, 2)});
    for (Feed& feed : strategy.feeds) feed.feel = "firm";
    PlanRequest request;
    request.kit = {parse_kit("cup 250")};
    const SessionPlan plan = planned(strategy, request);
    REQUIRE(plan.slow.size() == 1);
    CHECK(plan.put_ins.size() == 1);
    CHECK((plan.slow[0].times == 3 && plan.slow[0].each.count == 2));
    CHECK(plan.slow[0].each.with == "cup 250");
    // a ball of 45 mm is pi/6 x 4.5^3 = 47.71 cm3
    CHECK(plan.slow[0].each.each_volume.in(millilitre) == Approx(47.713).epsilon(1e-4));
    CHECK(plan.batches.size() == 1);
    CHECK(plan.wet_volume.in(millilitre) == Approx(250 + 6 * 47.713).epsilon(1e-4));
    const auto shaped = std::find_if(plan.prep.begin(), plan.prep.end(),
                                     [](const PrepJob& job) { return job.task == PrepTask::shape; });
    REQUIRE(shaped != plan.prep.end());
    CHECK(shaped->count == 2);

    RestRequest rest{120.0 * minute, {}, Bites::slow};
    RestOfSession called = rest_of_session(plan, rest);
    REQUIRE(called.put_in_now.size() == 1);
    CHECK(called.put_in_now[0].more == 2);
    rest.bites = Bites::steady;
    CHECK(rest_of_session(plan, rest).put_in_now.empty());
    rest.bites = Bites::slow;
    for (const double too_early_or_late : {59.0, 240.0}) {
        rest.now = too_early_or_late * minute;
        CHECK(rest_of_session(plan, rest).put_in_now.empty());
    }
}
