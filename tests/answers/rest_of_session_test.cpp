#include "answers/plan/rest_of_session.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "answers/plan/plan_session.h"
#include "answers/sessions.h"
#include "quantities/fault_of.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

SessionPlan rest_planned(const Strategy& strategy, const Shelf& shelf = bank()) {
    return plan_session(shelf, strategy, {}, {});
}

Feed rest_fed(FeedTiming when, FeedForm form, FeedSize size, std::vector<FeedPart> parts, int count = 1) {
    return {when, std::move(parts), form, size, count, "firm"};
}

/// Eight balls of 60 mm at the start, then one of 43 mm every half hour from 45 min on, as far as 285 min.
SessionPlan balls_then_one_every_half_hour() {
    Strategy strategy = session({rest_fed(at_start, FeedForm::ball, 60.0 * millimetre, {{"fishmeal mix"}}, 8),
                                 rest_fed({EveryTime{30.0 * minute}, 45.0 * minute, {}}, FeedForm::ball,
                                          43.0 * millimetre, {{"fishmeal mix"}})});
    return rest_planned(strategy);
}

RestOfFeed rest_of_all(const SessionPlan& plan, double minutes, MassOrVolume amount, Bites bites = Bites::steady) {
    return rest_of_session(plan, {minutes * minute, {{plan.feeds[0].name, amount}}, bites}).feeds.at(0);
}

double mass_told(const RestOfFeed& feed) {
    Mass mass = feed.home;
    for (const RestPutIns& put_ins : feed.then) mass += put_ins.mass();
    return mass.in(gram);
}

Mass least_of(const std::string& name, const SessionPlan& plan) {
    Mass least = 1e9 * kilogram;
    for (const PlannedFeed& put_in : plan.put_ins)
        if (put_in.name == name) least = std::min(least, put_in.each_mass);
    return least;
}

void check_put_ins(const RestPutIns& rest, const std::string& name, const SessionPlan& plan, Time now) {
    const Time left = plan.length - now;
    const double last = rest.first.in(minute) + (rest.put_ins - 1) * rest.gap.in(minute);
    RC_ASSERT((rest.put_ins >= 1 && rest.count >= 1 && rest.first >= Time{}));
    RC_ASSERT(last < left.in(minute));
    RC_ASSERT((rest.put_ins - (rest.planned ? 1 : 0)) * rest.gap.in(minute) <= left.in(minute));
    if (rest.put_ins > 1) RC_ASSERT(rest.gap.in(minute) >= rhythm_of(name, plan).in(minute)-1e-6);
    bool known = false;
    for (const PlannedFeed& put_in : plan.put_ins) {
        if (put_in.feed != rest.feed) continue;
        known = true;
        RC_ASSERT(rest.count <= put_in.count);
        RC_ASSERT(rest.each_mass.in(gram) <= put_in.each_mass.in(gram) * (1 + 1e-9));
        RC_ASSERT(rest.each_volume.in(millilitre) <= put_in.each_volume.in(millilitre) * (1 + 1e-9));
    }
    RC_ASSERT(known);
}

}  // namespace

TEST_CASE("what is left goes in by the plan, what is more than that comes home, and slow bites ask for a top-up") {
    Strategy strategy =
        session({rest_fed({EveryTime{30.0 * minute}, {}, {}}, FeedForm::cup, 250.0 * millilitre, {{"fishmeal mix"}})});
    const SessionPlan plan = rest_planned(strategy);
    RestOfFeed rest = rest_of_all(plan, 180, 1.0 * litre);
    REQUIRE(rest.then.size() == 1);
    CHECK((rest.then[0].put_ins == 4 && rest.planned_put_ins == 4 && rest.top_up == Volume{} && rest.home == Mass{}));
    CHECK(rest.then[0].each_volume.in(millilitre) == Approx(250));
    CHECK(rest.then[0].first.in(minute) == Approx(0).margin(1e-6));
    CHECK(rest.then[0].gap.in(minute) == Approx(30));
    CHECK(rest_of_all(plan, 180, 1.0 * litre, Bites::slow).top_up == Volume{});  // some goes in now anyway
    rest = rest_of_all(plan, 190, 1.0 * litre, Bites::slow);
    CHECK(rest.top_up_as == FeedForm::ball);
    CHECK(rest.ball.in(millimetre) == Approx(43));
    CHECK((rest.then[0].put_ins == 3 && rest.then[0].first.in(minute) == Approx(20)));
    CHECK((rest.top_up + rest.home_left).in(millilitre) == Approx(250));  // 1000 - 3 x 250
    CHECK(rest_of_all(plan, 190, 1.0 * litre, Bites::none).top_up == Volume{});
    CHECK(rest_of_all(plan, 190, plan.feeds[0].wet_mass).left.in(millilitre) ==
          Approx(plan.feeds[0].wet_volume.in(millilitre)));
    CHECK_THAT(fault_of([&] {
                   rest_of_session(plan, {1.0 * hour, {{"fishmeel mix", 1.0 * litre}}, Bites::steady});
               }).hint,
               Catch::Contains("fishmeal mix"));
    CHECK(fault_of([&] { rest_of_session(plan, {300.0 * minute, {}, Bites::steady}); }).code == "not-in-session");
}

TEST_CASE("too little for all put-ins of a cup makes half ones, then fewer; balls and feeders stay whole") {
    const auto every_half_hour = [](FeedForm form, FeedSize size) {
        return rest_planned(session({rest_fed({EveryTime{30.0 * minute}, {}, {}}, form, size, {{"fishmeal mix"}})}));
    };
    const SessionPlan cups_plan = every_half_hour(FeedForm::cup, 100.0 * millilitre);
    RestPutIns put_ins = rest_of_all(cups_plan, 10, 600.0 * millilitre).then.at(0);  // nine are planned
    CHECK((put_ins.put_ins == 9 && put_ins.each_volume.in(millilitre) == Approx(600.0 / 9)));
    put_ins = rest_of_all(cups_plan, 10, 200.0 * millilitre).then.at(0);
    CHECK((put_ins.put_ins == 4 && put_ins.each_volume.in(millilitre) == Approx(50)));
    CHECK(put_ins.gap.in(minute) == Approx(80));  // 30, 110, 190, 270
    const SessionPlan feeders = every_half_hour(FeedForm::feeder, 50.0 * millilitre);
    const Mass feeder = feeders.put_ins[0].each_mass;
    put_ins = rest_of_all(feeders, 10, 4.5 * feeder).then.at(0);
    CHECK((put_ins.put_ins == 4 && put_ins.each_mass.in(gram) == Approx(feeder.in(gram))));
    put_ins = rest_of_all(feeders, 10, 0.5 * feeder).then.at(0);
    CHECK((put_ins.put_ins == 1 && put_ins.each_mass.in(gram) == Approx(0.5 * feeder.in(gram))));
    const SessionPlan balls = every_half_hour(FeedForm::ball, 45.0 * millimetre);
    put_ins = rest_of_all(balls, 10, 0.5 * balls.put_ins[0].each_mass).then.at(0);
    CHECK(std::get<Length>(put_ins.size).in(millimetre) == Approx(35));  // 45 x 0.5^(1/3) = 35.7
    CHECK(rest_of_all(balls, 10, 0.1 * balls.put_ins[0].each_mass).then.at(0).form == FeedForm::loose);
}

TEST_CASE("balls are counted squeezed, and those of the start are still there at the start") {
    const SessionPlan plan = balls_then_one_every_half_hour();
    const Mass all = 8 * plan.put_ins[0].each_mass + 9 * plan.put_ins[1].each_mass;
    RestOfFeed rest = rest_of_all(plan, 0, all);
    REQUIRE(rest.then.size() == 2);
    CHECK((rest.then[0].count == 8 && rest.then[0].put_ins == 1 && rest.then[1].put_ins == 9));
    CHECK((rest.then[1].first.in(minute) == Approx(45) && rest.then[1].gap.in(minute) == Approx(30)));
    CHECK(rest.home == Mass{});
    CHECK(rest.left > 1.2 * rest.goes_in);
    rest = rest_of_all(plan, 0, 0.5 * all);
    CHECK((rest.then[0].count == 4 && rest.then[1].put_ins >= 4 && rest.then[1].put_ins <= 5));
    rest = rest_of_all(plan, 110, 1.5 * litre);
    REQUIRE(rest.then.size() == 1);
    CHECK((rest.then[0].put_ins == 6 && rest.home > Mass{}));
    CHECK(mass_told(rest) == Approx(rest.left_mass.in(gram)));
    rest = rest_of_all(plan, 295, 1.5 * litre, Bites::slow);  // five minutes before the end
    CHECK((rest.then.empty() && rest.top_up == Volume{}));
    CHECK(rest.home_left.in(litre) == Approx(1.5));
}

TEST_CASE("what goes in but once by the strategy goes in no more often than every half hour, in single portions") {
    const SessionPlan plan = rest_planned(session({cups("fishmeal mix", 250, 3, "soft")}));
    RestOfFeed rest = rest_of_all(plan, 110, 500.0 * millilitre);
    REQUIRE(rest.then.size() == 1);
    CHECK((rest.then[0].put_ins == 2 && rest.then[0].count == 1 && rest.home == Mass{}));
    CHECK(rest.then[0].gap.in(minute) == Approx(60));  // 190 / 3 = 63
    rest = rest_of_all(plan, 240, 500.0 * millilitre);
    CHECK((rest.then.at(0).put_ins == 1 && rest.home_left.in(millilitre) == Approx(250)));
    rest = rest_of_all(plan, 270, 500.0 * millilitre);
    CHECK((rest.then.empty() && rest.home_left.in(millilitre) == Approx(500)));
}

TEST_CASE("whatever is left whenever, what is told fits, no put-in is larger or sooner than planned, none is lost") {
    CHECK(rc::check([] {
        MemoryShelf shelf{&bank()};
        const Strategy strategy = any_session(shelf);
        const SessionPlan plan = rest_planned(strategy, shelf);
        const Time now = draft::drawn(0, 999, 0.001) * plan.length;
        const PlannedFeedTotal& of = plan.feeds[*rc::gen::inRange<std::size_t>(0, plan.feeds.size())];
        const Mass left = draft::drawn(1, 300, 0.01) * of.wet_mass;
        RC_PRE(left > Mass{});
        const Bites bites = *rc::gen::element(Bites::steady, Bites::slow, Bites::none);
        const RestOfFeed rest = rest_of_session(plan, {now, {{of.name, left}}, bites}).feeds.at(0);
        for (const RestPutIns& put_ins : rest.then) check_put_ins(put_ins, rest.name, plan, now);
        const double told = mass_told(rest) + (rest.top_up / rest.goes_in * rest.left_mass).in(gram);
        RC_ASSERT(told <= rest.left_mass.in(gram) * (1 + 1e-9));
        RC_ASSERT(rest.left_mass.in(gram)-told <= 0.5 * least_of(rest.name, plan).in(gram) + 1e-6);
    }));
}

TEST_CASE("by what is left, slow bites are fed as long as it makes a whole time, and what is kept is not spread") {
    Strategy strategy =
        session({rest_fed({EveryTime{60.0 * minute}, {}, {}}, FeedForm::cup, 100.0 * millilitre, {{"fishmeal mix"}}),
                 rest_fed({WhenSlow{3}, {}, {}}, FeedForm::cup, 50.0 * millilitre, {{"fishmeal mix"}})});
    strategy.feeds[0].feel = strategy.feeds[1].feel = "soft";
    const SessionPlan plan = rest_planned(strategy);
    RestRequest request{180.0 * minute, {{"fishmeal mix", 300.0 * millilitre}}, Bites::slow};
    RestOfSession rest = rest_of_session(plan, request);
    REQUIRE(rest.put_in_now.size() == 1);
    CHECK(rest.put_in_now[0].more == 2);
    CHECK(rest.feeds[0].top_up.in(millilitre) == Approx(50));
    // 300 ml: 50 now, 2 x 50 kept, 150 over the put-ins that are left
    CHECK((rest.feeds[0].then.at(0).put_ins * rest.feeds[0].then.at(0).each_volume).in(millilitre) == Approx(150));
    request.left[0].amount = 40.0 * millilitre;
    rest = rest_of_session(plan, request);
    CHECK(rest.put_in_now.empty());
    CHECK(rest.feeds[0].kept == 0);
    request.left[0].amount = 300.0 * millilitre;
    request.bites = Bites::steady;
    rest = rest_of_session(plan, request);
    CHECK(rest.feeds[0].kept == 3);
    CHECK((rest.feeds[0].then.at(0).put_ins * rest.feeds[0].then.at(0).each_volume).in(millilitre) == Approx(150));
}

TEST_CASE("the advice fits what goes in: no rhythm where nothing more does, no top-up where there is none") {
    const SessionPlan plan = rest_planned(
        session({rest_fed({EveryTime{30.0 * minute}, {}, {}}, FeedForm::cup, 250.0 * millilitre, {{"fishmeal mix"}})}));
    const auto advice_at = [&](double minutes, Bites bites, MassOrVolume left = 1.0 * litre) {
        std::string all;
        for (const PlanAdvice& advice :
             rest_of_session(plan, {minutes * minute, {{plan.feeds[0].name, left}}, bites}).advice)
            all += advice.text + " ";
        return all;
    };
    CHECK_THAT(advice_at(190, Bites::steady), Catch::Contains("Keep the rhythm"));
    CHECK_THAT(advice_at(299, Bites::steady), !Catch::Contains("rhythm") && Catch::Contains("without feeding"));
    CHECK_THAT(advice_at(190, Bites::slow), Catch::Contains("then top up"));
    CHECK_THAT(advice_at(299, Bites::slow), !Catch::Contains("top up") && Catch::Contains("past the feed"));
    CHECK_THAT(advice_at(190, Bites::none), Catch::Contains("half an hour"));
    CHECK_THAT(advice_at(299, Bites::none), !Catch::Contains("half an hour"));
}
