#include <catch2/catch.hpp>
#include <cmath>

#include "answers/learning.h"
#include "bait/hand.h"
#include "physics/normal_quantile.h"

using namespace baitwright;
using namespace baitwright::learning;

namespace {

Date next_day(int number) {
    return parse_date("2026-04-01") + std::chrono::days(number);
}

LoggedMix half_and_half(double wetness, double water) {
    LoggedMix mix = kilo_of("brown", wetness, water);
    mix.of = "half";
    mix.parts = {{"brown", 500.0 * gram}, {"white", 500.0 * gram}};
    return mix;
}

class TwoMeals : public MemoryShelf {
public:
    TwoMeals() {
        put(thirsty("brown", 0.6, 1.0));
        Ingredient white = thirsty("white", 0.8, 1.4);
        white.absorption.spread = white.slump.spread = 0.3;
        put(white);
    }
};

double day_variance() {
    return std::pow(log_normal_sigma(day_spread), 2);
}

}  // namespace

// One ingredient at h = 1: all is linear, so what the preview says must come, whatever is then observed.
TEST_CASE("the preview of one more mix is what that mix then brings") {
    MemoryShelf shelf;
    shelf.put(thirsty("meal", 0.6, 1.0));
    LearnRequest request;
    for (int n = 0; n < 4; ++n) {
        request.log.push_back(mixed(n + 1, next_day(n), kilo_of("meal", 1, 640 + 13 * n, 0.01)));
        const LearnAnswer now = learn_from_log(shelf, request);
        REQUIRE(now.next);
        REQUIRE(now.next->kind == NextTest::Kind::log_mix);  // good to 1.4 %, a squeeze test to 2 %
        CHECK(now.next->of == "all meal");
        CHECK(now.next->most_for == "all meal");
        LearnRequest more = request;
        more.log.push_back(mixed(99, next_day(100), kilo_of("meal", 1, 700, 0.01)));
        const LearnAnswer then = learn_from_log(shelf, more);
        CHECK(now.next->now == Approx(now.mixes.at(0).now).epsilon(1e-12));
        CHECK(now.next->then == Approx(then.mixes.at(0).now).epsilon(1e-12));
    }
}

TEST_CASE("the preview of a squeeze test is what a mix as telling as it would bring") {
    const TwoMeals shelf;
    LearnRequest request;
    for (int n = 0; n < 3; ++n) {
        LoggedMix felt_roughly = half_and_half(1, 700 + 20 * n);
        felt_roughly.within = 0.2;
        request.log.push_back(mixed(n + 1, next_day(n), felt_roughly));
    }
    const LearnAnswer now = learn_from_log(shelf, request);
    REQUIRE(now.next);
    CHECK(now.next->kind == NextTest::Kind::squeeze);
    CHECK(now.next->of == "white");  // the one known less, and the thirstier
    // A squeeze test is good to 2 % and the day: so is a mix of it alone at h = 1 read to sqrt(0.02^2 - 0.01^2). That
    // mix is logged too, so of the two only the doubt of the first is compared.
    LearnRequest more = request;
    const double seen = learn_from_log(shelf, request).water.bags.at(1).log_absorption;
    more.log.push_back(mixed(9, next_day(50), kilo_of("white", 1, 1000 * std::exp(seen), std::sqrt(3e-4))));
    const LearnAnswer then = learn_from_log(shelf, more);
    CHECK(then.mixes.at(0).mix == "half");
    CHECK(now.next->then == Approx(then.mixes.at(0).now).epsilon(2e-3));
    CHECK(now.next->then < now.next->now);
}

TEST_CASE("the test that helps most narrows the mean of all mixes most") {
    const TwoMeals shelf;
    LearnRequest request;
    request.log = {mixed(1, next_day(0), half_and_half(1.2, 800)), mixed(2, next_day(1), kilo_of("brown", 1.2, 700)),
                   mixed(3, next_day(2), kilo_of("brown", 1.7, 900))};
    const LearnAnswer now = learn_from_log(shelf, request);
    REQUIRE(now.mixes.size() == 2);
    REQUIRE(now.next);
    CHECK(now.mixes[0].mix == "all brown");
    CHECK(now.mixes[0].mixes == 2);
    CHECK(now.next->all_now == Approx((now.mixes[0].now + now.mixes[1].now) / 2).epsilon(1e-12));
    CHECK(now.next->all_then < now.next->all_now);
    for (const MixDoubtNow& mix : now.mixes) CHECK(mix.now < mix.before);
}

// By hand, at h = 1: before, the hand, memory, the spread and the moisture; 1.645 of the square root with the day's.
TEST_CASE("the doubt of a mix before anything is logged is that of the library, with the hand of the day") {
    MemoryShelf shelf;
    shelf.put(thirsty("meal", 0.6, 1.0));
    LoggedMix mix = kilo_of("meal", 1, 660);
    LearnRequest request;
    request.log = {mixed(1, next_day(0), mix)};
    const Hand hand;
    const double by_moisture = 0.1 * log_normal_sigma(0.1) / 0.9 * 1.6 / 0.6,
                 before = hand.hand_variance + hand.memory_variance + std::pow(log_normal_sigma(0.2), 2) +
                          by_moisture * by_moisture + day_variance();
    CHECK(learn_from_log(shelf, request).mixes.at(0).before ==
          Approx(normal_quantile(0.95) * std::sqrt(before)).epsilon(1e-12));
    // A third of the wetting comes from a liquid: what is uncertain of the whole is uncertain of the water poured.
    mix.wetting = 200.0 * gram;
    request.log = {mixed(1, next_day(0), mix)};
    CHECK(learn_from_log(shelf, request).mixes.at(0).before ==
          Approx(1.5 * normal_quantile(0.95) * std::sqrt(before)).epsilon(1e-12));
}

TEST_CASE("a course ends where all that was logged leads, and narrows with each day") {
    const TwoMeals shelf;
    LearnRequest request;
    for (int n = 0; n < 6; ++n)
        request.log.push_back(mixed(n + 1, next_day(7 * n), half_and_half(1 + 0.1 * n, 760 + 50 * n)));
    const LearnAnswer answer = learn_from_log(shelf, request);
    REQUIRE(answer.courses.size() >= 3);
    CHECK(answer.courses[0].last.property == Learnt::Property::water);
    CHECK(answer.courses[1].last.property == Learnt::Property::hand);
    for (const LearntCourse& course : answer.courses) {
        INFO(course.last.name);
        REQUIRE_FALSE(course.steps.empty());
        CHECK(course.steps.back().on == next_day(35));
        CHECK(course.steps.back().mean == Approx(course.last.mean).margin(1e-9));
        CHECK(course.steps.back().sd == Approx(course.last.sd).epsilon(1e-9));
        double last = course.last.prior_sd;
        for (const LearntStep& step : course.steps) {
            CHECK(step.sd < last);
            last = step.sd;
        }
    }
    CHECK(answer.courses[0].seen.size() == 6);
}

TEST_CASE("with a new bag its course widens again, and a season of many days is drawn in forty") {
    MemoryShelf shelf;
    shelf.put(thirsty("meal", 0.6, 1.0));
    LearnRequest request;
    for (int n = 0; n < 100; ++n) request.log.push_back(mixed(n + 1, next_day(n), kilo_of("meal", 1, 690)));
    request.log.push_back(entry_on(200, next_day(90), LoggedBag{"meal"}));
    const LearnAnswer answer = learn_from_log(shelf, request);
    const auto course = std::find_if(answer.courses.begin(), answer.courses.end(), [](const LearntCourse& one_of) {
        return one_of.last.property == Learnt::Property::absorption;
    });
    REQUIRE(course != answer.courses.end());
    CHECK(course->steps.size() == 40);
    const auto sd_on = [&](int first_day_from) {
        const auto at = std::find_if(course->steps.begin(), course->steps.end(),
                                     [&](const LearntStep& step) { return step.on >= next_day(first_day_from); });
        return at->sd;
    };
    CHECK(sd_on(90) > 1.5 * sd_on(85));
    CHECK(course->last.sd < sd_on(90));
}

TEST_CASE("a mix of twice the water is set aside and named with what was to be expected") {
    MemoryShelf shelf;
    shelf.put(thirsty("meal", 0.6, 1.0));
    LearnRequest request;
    for (int n = 0; n < 8; ++n)
        request.log.push_back(mixed(n + 1, next_day(n), kilo_of("meal", 1, n == 5 ? 1320 : 660)));
    const LearnAnswer answer = learn_from_log(shelf, request);
    REQUIRE(answer.set_aside.size() == 1);
    CHECK(answer.set_aside[0].entry.id == 6);
    CHECK(answer.set_aside[0].observed == Approx(1320));
    CHECK(answer.set_aside[0].expected == Approx(660).epsilon(0.02));
    CHECK(answer.set_aside[0].sigmas > 3);
    CHECK(answer.observations == 7);
    CHECK(answer.water.bags.at(0).mixes == 7);
    request.log[5].believed = true;
    const LearnAnswer believed = learn_from_log(shelf, request);
    CHECK(believed.set_aside.empty());
    CHECK(believed.water.bags.at(0).log_absorption > answer.water.bags.at(0).log_absorption + 0.05);
}

TEST_CASE("water that no mix of the kind can take leaves all numbers finite") {
    MemoryShelf shelf;
    Ingredient soil = thirsty("damp soil", 0.05, 0.2);
    soil.moisture = draft::stated<Ratio>(0.2, 0.25);  // what it takes is a small difference of two large ones
    shelf.put(soil);
    shelf.put(thirsty("meal", 0.6, 1.0));
    LearnRequest request;
    for (int n = 0; n < 4; ++n) {
        LoggedMix mix = kilo_of("damp soil", n % 2 == 0 ? 0.7 : 2.1, n % 2 == 0 ? 2 : 5000);
        mix.parts.push_back({"meal", 20.0 * gram});
        request.log.push_back(mixed(n + 1, next_day(n), mix));
        request.log.back().believed = true;
    }
    const LearntWater water = learn_from_log(shelf, request).water;
    CHECK(std::isfinite(water.log_hand));
    for (const LearntWater::Bag& bag : water.bags)
        CHECK((std::isfinite(bag.log_absorption) && std::isfinite(bag.log_gap)));
    for (const double one_of : water.factor) CHECK(std::isfinite(one_of));
}
