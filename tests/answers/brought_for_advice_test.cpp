#include "answers/paid/brought_for_advice.h"

#include <catch2/catch.hpp>

#include "answers/paid_log.h"
#include "answers/strategy/advise_points.h"

using namespace baitwright;
using paid_log::PaidLog;

TEST_CASE("advice hears of days like this one, and moves a strategy by two points at most") {
    PaidLog log;
    for (const double kilos : {9.0, 11.0, 10.0, 9.5, 10.5, 9.0}) log.session("open carpet", kilos).clarity = "tinged";
    for (const double kilos : {1.0, 1.2, 0.9, 1.1, 1.3, 0.8}) log.session("tight balls", kilos).clarity = "tinged";
    Circumstances now;
    now.clarity = "tinged";
    const std::vector<BroughtBefore> brought = brought_for_advice(log.entries, now);
    REQUIRE(brought.size() == 2);
    CHECK(brought[0].strategy == "open carpet");
    CHECK(brought[0].where == "in tinged water");
    CHECK(point_of(brought[0])->points == 2);
    CHECK(point_of(brought[1])->points == -2);
    now.clarity = "clear";
    CHECK(brought_for_advice(log.entries, now)[0].where.empty());
    CHECK(brought_for_advice({}, now).empty());
}

TEST_CASE("advice says how much a strategy brought and how sure that is, and nothing of a small difference") {
    CHECK(point_of({"open carpet", 2.04, 6, false, "in tinged water"})->reason ==
          "brought you twice as much an hour as your other ways in tinged water (6 sessions, not sure)");
    CHECK(point_of({"open carpet", 1.62, 6, false, ""})->points == 1);
    CHECK(point_of({"open carpet", 0.5, 6, true, ""})->reason ==
          "brought you half as much an hour as your other ways (6 sessions, as good as sure)");
    CHECK_FALSE(point_of({"open carpet", 1.3, 20, true, ""}));
}
