// What a person always uses, where a flag's value leaves it open: the size of a cup, the unit of a temperature.
#include <catch2/catch.hpp>

#include "quantities/fault_of.h"
#include "questions/advise_question.h"
#include "questions/dry_question.h"
#include "questions/mix_question.h"
#include "questions/read_flags.h"

using namespace baitwright;

namespace {

Arguments typed_by_one(const std::string& flag, const std::string& value, Usual usual = {}) {
    return {{"silt bed"}, {{flag, {value}}}, std::move(usual)};
}

Vessels vessels_of(const std::string& flag, const std::string& value, std::vector<std::string> kit) {
    return std::get<Vessels>(mix_request(typed_by_one(flag, value, {{"kit", std::move(kit)}})).target);
}

}  // namespace

TEST_CASE("a number of cups is of the one cup or pot that the person always uses") {
    const Vessels cups = vessels_of("--cups", "4", {"feeder 30", "cup 250", "tub 12 l"});
    CHECK(cups.count == 4);
    CHECK(cups.each.in(millilitre) == Approx(250));
    CHECK(vessels_of("--cups", " 12 ", {"pot 25"}).each.in(millilitre) == Approx(25));
    const Vessels feeders = vessels_of("--feeders", "20", {"feeder 30", "cup 250", "pot 25"});
    CHECK(feeders.count == 20);
    CHECK(feeders.each.in(millilitre) == Approx(30));
    // A size that is said is the one that is meant.
    CHECK(vessels_of("--cups", "4x100ml", {"cup 250"}).each.in(millilitre) == Approx(100));
}

TEST_CASE("a number of cups alone is answered with the sizes there are") {
    const auto asked = [](const std::string& flag, std::vector<std::string> kit) {
        return fault_of([&] { mix_request(typed_by_one(flag, "4", {{"kit", std::move(kit)}})); });
    };
    const Fault none = asked("--cups", {});
    CHECK(none.code == "no-size");
    CHECK(none.message == "--cups: how large is a cup?");
    CHECK(none.hint ==
          "the usual ones are toss pot 10, toss pot 25, toss pot 40, cup 100, cup 250, cup 500; type --cups 4x250ml");
    CHECK(asked("--cups", {"feeder 30"}).hint == none.hint);
    CHECK(asked("--cups", {"cup 250", "pot 25"}).hint == "the usual ones are cup 250, pot 25; type --cups 4x250ml");
    CHECK(asked("--feeders", {"cup 250"}).message == "--feeders: how large is a feeder?");
    CHECK(asked("--feeders", {"cup 250"}).hint == "type --feeders 4x30ml");
    CHECK(asked("--balls", {"cup 250"}).hint ==
          "the usual ones are walnut, golf ball, egg, satsuma, orange; type --balls 4x55mm");
    CHECK(fault_of([] { mix_request(typed_by_one("--cups", "4.5", {{"kit", {"cup 250"}}})); }).code == "bad-count");
    CHECK(fault_of([] { mix_request(typed_by_one("--balls", "0")); }).code == "bad-count");
}

TEST_CASE("a bare temperature is in degC, but not where the usual units are imperial") {
    CHECK(read_temperature(typed_by_one("--water-temp", "8"), "8").in_celsius() == Approx(8));
    CHECK(read_temperature(typed_by_one("--water-temp", "8", {{"units", {"metric"}}}), "8").in_celsius() == Approx(8));
    CHECK(mix_request(typed_by_one("--water-temp", "12")).water_temperature.in_celsius() == Approx(12));
    CHECK(circumstances(typed_by_one("--water-temp", "6.5")).temperature->in_celsius() == Approx(6.5));
    const Arguments imperial = typed_by_one("--air-temp", "50", {{"units", {"imperial"}}});
    const Fault fault = fault_of([&] { read_temperature(imperial, "50"); });
    CHECK(fault.code == "no-unit");
    CHECK(fault.message == "'50' has no unit");
    CHECK(fault.hint == "write it as in 12degC or 54degF");
    CHECK(read_temperature(imperial, "50 F").in_celsius() == Approx(10));
}

TEST_CASE("bare hours are hours for dry and for advise") {
    CHECK(circumstances(typed_by_one("--hours", "4")).hours->in(hour) == Approx(4));
    const Arguments dry({"silt bed"}, {{"--tub", {"40 x 30 cm"}}, {"--hours", {"4"}}, {"--air-temp", {"30"}}});
    CHECK(dry_request(dry).hours.in(hour) == Approx(4));
    CHECK(dry_request(dry).air.in_celsius() == Approx(30));
    CHECK(read_hours("1h30m").in(minute) == Approx(90));
    CHECK(fault_of([] { read_hours("4 or so"); }).code == "unknown-unit");
}
