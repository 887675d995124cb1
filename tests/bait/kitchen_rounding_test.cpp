#include "bait/kitchen_rounding.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "quantities/units.h"

using namespace baitwright;

namespace {

double dry(double grams) {
    return kitchen_mass(grams * gram).in(gram);
}
double water(double grams) {
    return kitchen_water(grams * gram).in(gram);
}
double additive(double grams) {
    return kitchen_additive(grams * gram).in(gram);
}
double poured(double millilitres) {
    return kitchen_additive(millilitres * millilitre).in(millilitre);
}

}  // namespace

TEST_CASE("dry parts are weighed to 1 g, from 50 g to 5 g, from 2 kg to 10 g") {
    CHECK(dry(12.4) == Approx(12));
    CHECK(dry(49.4) == Approx(49));
    CHECK(dry(52.6) == Approx(55));
    CHECK(dry(432.4) == Approx(430));
    CHECK(dry(1997) == Approx(1995));
    CHECK(dry(2004) == Approx(2000));
    CHECK(dry(2006) == Approx(2010));
}

TEST_CASE("water is poured to 1 g, from 20 g to 5 g, from 2 kg to 10 g") {
    CHECK(water(18.6) == Approx(19));
    CHECK(water(22.6) == Approx(25));
    CHECK(water(624.4) == Approx(625));
    CHECK(water(2346) == Approx(2350));
    CHECK(water(2344) == Approx(2340));
}

TEST_CASE("additives are measured to 0.1, from 5 to 0.5, from 20 to 1, from 100 to 5") {
    CHECK(additive(1.23) == Approx(1.2));
    CHECK(additive(7.3) == Approx(7.5));
    CHECK(additive(33.4) == Approx(33));
    CHECK(additive(152) == Approx(150));
    CHECK(poured(1.23) == Approx(1.2));
    CHECK(poured(7.3) == Approx(7.5));
    CHECK(poured(33.4) == Approx(33));
    CHECK(poured(152) == Approx(150));
}

TEST_CASE("a trace is never rounded to nothing, and nothing stays nothing") {
    CHECK(dry(0.01) == Approx(1));
    CHECK(water(0.01) == Approx(1));
    CHECK(additive(0.001) == Approx(0.1));
    CHECK(dry(0) == 0);
    CHECK(water(0) == 0);
    CHECK(additive(0) == 0);
    CHECK(poured(0) == 0);
}

TEST_CASE("rounding moves an amount by half a step at most, and what is rounded stays") {
    CHECK(rc::check([] {
        const double grams = *rc::gen::inRange(100, 900000) / 100.0;
        const double once = dry(grams);
        RC_ASSERT(std::abs(once - grams) <= (grams < 50 ? 0.5 : grams < 2000 ? 2.5 : 5) + 1e-9);
        RC_ASSERT(std::abs(dry(once) - once) < 1e-9);
        RC_ASSERT(std::abs(water(water(grams)) - water(grams)) < 1e-9);
        RC_ASSERT(std::abs(additive(additive(grams)) - additive(grams)) < 1e-9);
    }));
}

TEST_CASE("a wait is as fine as a person keeps it, and never nothing") {
    const auto waited = [](double minutes) { return kitchen_time(minutes * minute).in(minute); };
    const auto soaked = [](double minutes) { return kitchen_soak_time(minutes * minute).in(second); };
    CHECK(waited(0) == 0);
    CHECK(waited(0.2) == Approx(1));
    CHECK(waited(6.6) == Approx(7));
    CHECK(waited(23) == Approx(25));
    CHECK(waited(500) == Approx(480));
    CHECK(soaked(0) == 0);
    CHECK(soaked(0.01) == Approx(5));
    CHECK(soaked(0.4) == Approx(25));
    CHECK(soaked(1.6) == Approx(90));
    CHECK(soaked(18.4) == Approx(18 * 60));
    CHECK(soaked(22.4) == Approx(20 * 60));
}

TEST_CASE("a time between put-ins is rounded down, so that as many as are told fit") {
    const auto gap = [](double minutes) { return kitchen_gap(minutes * minute).in(second); };
    const auto chosen = [](double minutes) { return told_gap(minutes * minute).in(second); };
    CHECK(gap(1.58) == Approx(90));
    CHECK(gap(0.07) == Approx(4));
    CHECK(gap(9.9) == Approx(9 * 60));
    CHECK(gap(12.5) == Approx(10 * 60));
    CHECK(gap(63.3) == Approx(60 * 60));
    CHECK(chosen(80.0 / 60) == Approx(80));
    CHECK(chosen(7.5) == Approx(450));
    CHECK(chosen(20.0 / 3) == Approx(396));
    CHECK(chosen(30) == Approx(1800));
}
