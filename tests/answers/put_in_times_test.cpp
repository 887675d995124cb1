#include "answers/strategy/put_in_times.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "quantities/fault_of.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

std::vector<double> minutes(const FeedTiming& when, const Pace& pace, Time length) {
    std::vector<double> result;
    for (const Time moment : put_in_times(when, pace, length)) result.push_back(moment.in(minute));
    return result;
}

}  // namespace

TEST_CASE("a feed on a clock goes in from its start and strictly before its end") {
    const FeedTiming when{EveryTime{40.0 * minute}, 60.0 * minute, 270.0 * minute};
    const std::vector<double> found = minutes(when, {}, 5.0 * hour);
    REQUIRE(found.size() == 6);
    for (std::size_t i = 0; i < 6; ++i) CHECK(found[i] == Approx(60 + 40.0 * static_cast<double>(i)));
    CHECK(minutes({EveryTime{40.0 * minute}, 60.0 * minute, 260.0 * minute}, {}, 5.0 * hour).size() == 5);
}

TEST_CASE("sixty put-ins an hour apart by five minutes fill five hours, and none falls on the end") {
    const std::vector<double> found = minutes({EveryPutIn{}, {}, {}}, {12.0, {}}, 5.0 * hour);
    REQUIRE(found.size() == 60);
    CHECK(found.front() == 0);
    CHECK(found.back() == Approx(295));
    CHECK(minutes({EveryPutIn{}, {}, {}}, {7.0, {}}, 5.0 * hour).size() ==
          35);  // sevenths of an hour do not add up exactly
}

TEST_CASE("a feed by fish waits for the first of them") {
    const std::vector<double> found = minutes({EveryFish{6}, {}, {}}, {{}, 10.0}, 5.0 * hour);
    REQUIRE(found.size() == 8);
    CHECK(found.front() == Approx(36));
    CHECK(found.back() == Approx(288));
    CHECK(minutes({EveryFish{60}, {}, {}}, {{}, 10.0}, 5.0 * hour).empty());
}

TEST_CASE("a feed at once goes in once, if the session lasts that long") {
    CHECK(minutes({AtOnce{}, {}, {}}, {}, 1.0 * hour) == std::vector<double>{0});
    CHECK(minutes({AtOnce{60.0 * minute}, {}, {}}, {}, 1.0 * hour).empty());
    CHECK(minutes({AtOnce{59.0 * minute}, {}, {}}, {}, 1.0 * hour).size() == 1);
}

TEST_CASE("what cannot be counted is refused") {
    CHECK(fault_of([] { (void)put_in_times({EveryPutIn{}, {}, {}}, {}, 5.0 * hour); }).code == "no-pace");
    CHECK(fault_of([] { (void)put_in_times({EveryFish{6}, {}, {}}, {12.0, {}}, 5.0 * hour); }).code == "no-pace");
    CHECK(fault_of([] { (void)put_in_times({EveryTime{}, {}, {}}, {}, 5.0 * hour); }).code == "too-many-put-ins");
    CHECK(fault_of([] {
              (void)put_in_times({EveryTime{0.1 * second}, {}, {}}, {}, 5.0 * hour);
          }).code == "too-many-put-ins");
}

TEST_CASE("put-ins rise, none is before the start or at or after the end, and a longer session has no fewer") {
    CHECK(rc::check([] {
        const Time gap = *rc::gen::inRange(10, 20000) * second, from = *rc::gen::inRange(0, 20000) * second;
        const Time length = *rc::gen::inRange(60, 86400) * second, more = *rc::gen::inRange(0, 20000) * second;
        const FeedTiming when{EveryTime{gap}, from, {}};
        const std::vector<Time> found = put_in_times(when, {}, length);
        for (std::size_t i = 0; i < found.size(); ++i) {
            RC_ASSERT(found[i] >= from);
            RC_ASSERT(found[i] < length);
            if (i > 0) RC_ASSERT(found[i] > found[i - 1]);
        }
        RC_ASSERT(put_in_times(when, {}, length + more).size() >= found.size());
    }));
}
