#include "answers/drop/drop_feed.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "answers/drop/drop_sketch.h"
#include "answers/soaking.h"
#include "quantities/fault.h"

using namespace baitwright;

namespace {

DropRequest cup(double millilitres, std::string feel, double metres = 2.5) {
    DropRequest request;
    request.form = DroppedCup{millilitres * millilitre};
    request.feel = std::move(feel);
    request.depth = metres * metre;
    return request;
}

DropRequest ball(double millimetres, std::string feel, double metres = 2.5) {
    DropRequest request = cup(1, std::move(feel), metres);
    request.form = DroppedBall{millimetres * millimetre};
    return request;
}

DropAnswer dropped(const Recipe& recipe, const DropRequest& request) {
    return drop_feed(draft::soaking_shelf(), recipe, request);
}

bool warns(const DropAnswer& answer, const std::string& code) {
    return std::any_of(answer.warnings.begin(), answer.warnings.end(),
                       [&](const Warning& w) { return w.code == code; });
}

}  // namespace

// Common practice, no source: 0.45 to 0.75 m down, about a metre wide.
TEST_CASE("a soft cup of the fishmeal mix breaks half a metre down and lies about a metre wide") {
    const DropAnswer answer = dropped(draft::fishmeal_mix(), cup(250, "soft"));
    CHECK(answer.breaks == Breaks::midwater);
    CHECK(answer.breaks_depth > 0.45 * metre);
    CHECK(answer.breaks_depth < 0.75 * metre);
    CHECK(answer.breaks_at.in(second) == Approx(1.7).epsilon(0.3));
    CHECK(answer.width.most.in(metre) == Approx(0.9).epsilon(0.4));
}

TEST_CASE("all is somewhere: what has landed and what hangs are one") {
    CHECK(rc::check([] {
        const Recipe recipe =
            *rc::gen::element(draft::fishmeal_mix(), draft::crumb_mix(), draft::leam_mix(), draft::micro_mix());
        const DropAnswer answer =
            dropped(recipe, cup(*rc::gen::inRange(20, 600),
                                *rc::gen::element<std::string>("dusty", "crumbly", "firm", "soft", "slop"),
                                *rc::gen::inRange(5, 80) * 0.1));
        double shares = 0;
        for (const DropClass& c : answer.classes) shares += c.share;
        for (const DropPart& part : answer.parts) shares += part.share * part.fines;
        RC_ASSERT(std::abs(shares - 1) < 1e-12);
        for (int i = 1; i < 4; ++i) RC_ASSERT(answer.hanging[i] <= answer.hanging[i - 1] + 1e-12);
        RC_ASSERT(answer.landed.p10 <= answer.landed.p50);
        RC_ASSERT(answer.landed.p50 <= answer.landed.p90);
        RC_ASSERT(answer.width.half <= answer.width.most);
        RC_ASSERT(answer.breaks_depth <= answer.depth);
    }));
}

TEST_CASE("what lands whole breaks no deeper than the bottom") {
    for (const Recipe& recipe : {draft::fishmeal_mix(), draft::crumb_mix(), draft::leam_mix(), draft::micro_mix()})
        CHECK(dropped(recipe, cup(199, "soft", 0.5)).breaks_depth <= 0.5 * metre);
}

TEST_CASE("deeper water never gives a narrower carpet") {
    CHECK(rc::check([] {
        const double depth = *rc::gen::inRange(5, 80) * 0.1, more = depth + *rc::gen::inRange(1, 20) * 0.1;
        const std::string feel = *rc::gen::element<std::string>("dusty", "crumbly", "firm", "soft");
        const Recipe recipe = *rc::gen::element(draft::fishmeal_mix(), draft::crumb_mix(), draft::leam_mix());
        RC_ASSERT(dropped(recipe, cup(250, feel, more)).width.most.si() >=
                  dropped(recipe, cup(250, feel, depth)).width.most.si() - 1e-9);
    }));
}

TEST_CASE("water shallower than the breaking depth is reached whole, and all lies there at once") {
    const DropAnswer answer = dropped(draft::fishmeal_mix(), cup(250, "soft", 0.4));
    CHECK(answer.breaks == Breaks::bottom);
    CHECK(answer.landed.p10 == answer.landed.p90);
    CHECK(answer.width.most.in(metre) < 0.3);
}

TEST_CASE("a firm ball reaches the bottom and falls apart there; a hard one takes longer") {
    DropRequest request = ball(55, "firm");
    const DropAnswer firm = dropped(draft::fishmeal_mix(), request);
    CHECK(firm.breaks == Breaks::bottom);
    CHECK(firm.lasts > 30.0 * second);
    request.squeeze = Squeeze::hard;
    CHECK(dropped(draft::fishmeal_mix(), request).lasts > firm.lasts);
}

TEST_CASE("a crumbly ball breaks on its way down; thrown, it bursts on the surface") {
    DropRequest request = ball(55, "crumbly");
    CHECK(dropped(draft::fishmeal_mix(), request).breaks == Breaks::midwater);
    request.thrown = true;
    const DropAnswer thrown = dropped(draft::fishmeal_mix(), request);
    CHECK(thrown.breaks == Breaks::surface);
    CHECK(warns(thrown, "bursts"));
}

TEST_CASE("dusty feed is no ball: it goes in as a cupful, breaks at the surface, and says so") {
    const DropAnswer answer = dropped(draft::fishmeal_mix(), ball(55, "dusty"));
    CHECK(answer.breaks == Breaks::surface);
    CHECK(warns(answer, "no-ball"));
}

TEST_CASE("a dusty mix still clouds the water after ten minutes") {
    CHECK(dropped(draft::leam_mix(), cup(250, "dusty")).hanging[2] > 0.01);
    CHECK(dropped(draft::fishmeal_mix(), cup(250, "dusty")).hanging[2] > 0.01);
}

// A lively mix holds binder below zero, a method mix above: at one feel and size at least five times apart.
TEST_CASE("a lively mix and a method mix at one feel hold at least five times differently") {
    const Recipe lively = draft::mix_of(
        "lively", {{"brown crumb", 5}, {"ground hemp, toasted", 2}, {"polenta, coarse maize", 2}, {"wheat bran", 1}});
    const Recipe method =
        draft::mix_of("method", {{"ground fishmeal pellet", 5}, {"predigested fishmeal", 3}, {"wheat flour", 1}});
    CHECK(dropped(method, ball(60, "firm", 20)).lasts > Time{});
    DropRequest request = ball(60, "firm", 100);
    const auto hold = [&](const Recipe& recipe) {
        const DropAnswer answer = dropped(recipe, request);
        return (answer.breaks_at + answer.lasts).in(second);
    };
    CHECK(hold(method) > 5 * hold(lively));
}

TEST_CASE("an even tow carries each class by the time that it takes, and the length grows by the drift") {
    DropRequest request = cup(250, "soft");
    const DropAnswer still = dropped(draft::fishmeal_mix(), request);
    CHECK(still.drift.p90 == Length{});
    CHECK(still.length.most == still.width.most);
    request.tow = 5 * centimetre_per_second;
    request.tow_bottom = 5 * centimetre_per_second;
    const DropAnswer carried = dropped(draft::fishmeal_mix(), request);
    CHECK(carried.water == TowProfile::straight);
    for (const DropClass& c : carried.classes)
        if (!c.in_lump) CHECK(c.drift.in(metre) == Approx(0.05 * c.lands.in(second)).epsilon(0.01));
    CHECK(carried.length.most > carried.width.most);
    CHECK(carried.width.most.si() == Approx(still.width.most.si()));
}

TEST_CASE("a river that runs backwards at the bed is refused") {
    DropRequest request = cup(250, "soft");
    request.tow = 20 * centimetre_per_second;
    request.kind = WaterKind::river;
    request.tow_bottom = -2 * centimetre_per_second;
    CHECK_THROWS_AS(dropped(draft::fishmeal_mix(), request), UsageError);
}

TEST_CASE("a feeder lands at once and empties on the bottom") {
    DropRequest request = cup(30, "firm");
    request.form = DroppedFeeder{30.0 * millilitre};
    const DropAnswer answer = dropped(draft::fishmeal_mix(), request);
    CHECK(answer.breaks == Breaks::bottom);
    CHECK(answer.landed.p50 == Time{});
    CHECK(answer.lasts > Time{});
}

TEST_CASE("a loose handful breaks at the surface and lies wider than a cupful of the same") {
    DropRequest request = cup(100, "crumbly");
    const DropAnswer cupped = dropped(draft::fishmeal_mix(), request);
    request.form = DroppedLoose{100.0 * millilitre};
    const DropAnswer loose = dropped(draft::fishmeal_mix(), request);
    CHECK(loose.breaks == Breaks::surface);
    CHECK(loose.width.half > cupped.width.half);
}

TEST_CASE("what a person saw replaces the default, and the answer says whose number it is") {
    DropRequest request = cup(250, "soft");
    request.own.breaks_at = 1.2 * metre;
    request.own.carpet = 2.0 * metre;
    const DropAnswer answer = dropped(draft::fishmeal_mix(), request);
    CHECK(answer.breaks_depth.in(metre) == Approx(1.2));
    CHECK(answer.width.most.in(metre) == Approx(2).epsilon(0.01));
    CHECK(answer.own == std::vector<std::string>{"breaking depth", "carpet"});
    CHECK(answer.breaks_depth_range.low.in(metre) == Approx(1.2));
    DropRequest thrown = ball(55, "firm", 20);
    thrown.own.holds = 2.0 * second;
    CHECK(dropped(draft::fishmeal_mix(), thrown).breaks_at.in(second) == Approx(2).epsilon(1e-6));
    request.own.cup_weighs = 300.0 * gram;
    CHECK(dropped(draft::fishmeal_mix(), request).wet_mass.in(gram) == Approx(300));
}

TEST_CASE("the ranges hold the headline") {
    const DropAnswer answer = dropped(draft::fishmeal_mix(), cup(250, "soft"));
    CHECK(answer.breaks_depth_range.low < answer.breaks_depth);
    CHECK(answer.breaks_depth_range.high > answer.breaks_depth);
    CHECK(answer.width_range.low < answer.width.most);
    CHECK(answer.width_range.high > answer.width.most);
    CHECK(answer.landed_half_range.low < answer.landed.p50);
    CHECK(answer.landed_half_range.high > answer.landed.p50);
}

TEST_CASE("a hook pellet is told against the feed's landing") {
    DropRequest request = cup(250, "dusty");
    request.hook = "expander 6 mm";
    const DropAnswer answer = dropped(draft::fishmeal_mix(), request);
    REQUIRE(answer.hook);
    CHECK(answer.hook->lands < answer.landed.p50);
    CHECK(answer.hook->with_the_feed ==
          (answer.hook->lands >= answer.landed.p10 && answer.hook->lands <= answer.landed.p90));
}

TEST_CASE("a mix that is lighter than water floats, says so and why, and the answer is no") {
    MemoryShelf shelf(&draft::shelf());
    Ingredient cork = draft::shelf().ingredient("wheat bran");
    cork.name = "cork meal";
    cork.loose_density.value = 100.0 * gram_per_litre;
    cork.envelope_density.value = 0.3 * gram_per_millilitre;
    cork.skeleton_density.value = 0.9 * gram_per_millilitre;
    shelf.put(cork);
    const DropAnswer answer = drop_feed(shelf, draft::mix_of("cork", {{"cork meal", 1}}), cup(250, "soft"));
    REQUIRE(answer.warnings.size() == 1);
    CHECK(answer.warnings[0].code == "floats");
    CHECK(answer.warnings[0].answer_is_no);
    CHECK(answer.warnings[0].message.find("cork meal") != std::string::npos);
    CHECK(answer.classes.empty());
}

TEST_CASE("water, tows and portions that cannot be are refused") {
    const auto refused = [](const DropRequest& request) {
        try {
            dropped(draft::fishmeal_mix(), request);
        } catch (const UsageError&) {
            return true;
        }
        return false;
    };
    CHECK(refused(cup(250, "soft", 0)));
    CHECK(refused(cup(250, "soft", 500)));
    CHECK(refused(cup(250000, "soft")));
    CHECK(refused(ball(2000, "firm")));
    DropRequest flood = cup(250, "soft");
    flood.tow = 4 * metre_per_second;
    CHECK(refused(flood));
    DropRequest ice = cup(250, "soft");
    ice.water = Temperature::from_celsius(-3);
    CHECK(refused(ice));
}

// By hand: two equal patches, one twice as wide; within radius r lie r^2/2 (r^2 + r^2/4)/2.
TEST_CASE("a width holds the share that it says, and a share lies between the middles of its classes") {
    const std::vector<EvenPatch> patches{{1.0 * metre, 1}, {2.0 * metre, 1}};
    CHECK(width_of(patches, 0.5).in(metre) == Approx(2 * std::sqrt(0.8)));
    CHECK(width_of(patches, 0.9).in(metre) == Approx(2 * std::sqrt(3.2)));
    CHECK(point_of({{10, 1}, {20, 1}}, 0.5) == Approx(15));
    CHECK(point_of({{20, 1}, {10, 1}}, 0.1) == Approx(10));
    CHECK(point_of({{20, 3}, {10, 1}}, 0.95) == Approx(20));
}
