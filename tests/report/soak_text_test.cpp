#include "report/soak_text.h"

#include <catch2/catch.hpp>

#include "answers/soaking.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

SoakAnswer left_under_water(const char* pellet, Time time, double celsius = 15) {
    SoakRequest request = draft::soak_of(pellet, 500.0 * gram, celsius);
    request.soaked = time;
    return draft::soaked(request);
}

std::string first_line(const Told& told) {
    return told.pieces().at(0).text;
}

bool tells(const Told& told, const std::string& words) {
    return told.text().find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("pellets left overnight: the first line says mush, and how long is right") {
    const SoakAnswer answer = left_under_water("fishmeal micro pellet 2 mm", 8.0 * hour);
    const Told told = soak_told(answer);
    INFO(told.text());
    CHECK(first_line(told).find("Left overnight: mush. Right is ") == 0);
    CHECK(first_line(told).find(" min under water at 15 degC") != std::string::npos);
    CHECK(told.pieces().at(1).label == "Way out");
    CHECK_FALSE(tells(told, "Mind"));  // said once
    CHECK_FALSE(tells(told, "Stand"));
    CHECK(tells(told, "Bin what smells sour"));
}

TEST_CASE("what our reckoning does not take for mush is not called so, however long it lay") {
    // A short soak of a big pellet in cold water: hardly anything has got in.
    const SoakAnswer short_soak = left_under_water("fishmeal pellet 8 mm", 30.0 * minute, 5);
    REQUIRE(short_soak.soaked.at(0).uptake < over_soaked);
    CHECK_FALSE(tells(soak_told(short_soak), "mush."));
    CHECK(first_line(soak_told(short_soak)).find("fishmeal pellet 8 mm: ") == 0);
    // And what was to take nine tenths was not left by the clock: a warning, no verdict.
    SoakRequest request = draft::soak_of("fishmeal pellet 4 mm", 500.0 * gram);
    request.uptake = 0.9;
    const Told asked = soak_told(draft::soaked(request));
    CHECK(first_line(asked).find("fishmeal pellet 4 mm: ") == 0);
    CHECK(tells(asked, "over-soaked"));
}

TEST_CASE("a core that still holds is said, and a time that is no night is told as it is") {
    const SoakAnswer answer = left_under_water("fishmeal pellet 8 mm", 6.0 * hour);
    const double drained_core = answer.soaked.at(0).drained.core;
    const std::string first = first_line(soak_told(answer));
    INFO(first << ", core " << drained_core << ", all " << double(answer.soaked.at(0).uptake));
    if (answer.soaked.at(0).uptake > over_soaked)
        CHECK((drained_core < over_soaked) == (first.find("in the core") != std::string::npos));
    CHECK(first_line(soak_told(left_under_water("fishmeal micro pellet 2 mm", 40.0 * minute))).find("Left 40 min: ") ==
          0);
}

TEST_CASE("of several pellets each that lay too long is named, and the others are told as ever") {
    SoakRequest request = draft::soak_of("fishmeal micro pellet 2 mm", 1.0 * kilogram);
    request.items.push_back({"fishmeal pellet 8 mm", std::nullopt, 1});
    request.soaked = 40.0 * minute;
    const SoakAnswer answer = draft::soaked(request);
    REQUIRE(answer.soaked.at(0).uptake > over_soaked);
    REQUIRE(answer.soaked.at(1).uptake < over_soaked);
    const Told told = soak_told(answer);
    CHECK(first_line(told).find("Fishmeal micro pellet 2 mm, left 40 min: mush") == 0);
    CHECK(tells(told, "Stand"));
}

TEST_CASE("cold water and warm side by side keep the weights: they are the same in both") {
    std::vector<SoakAnswer> answers;
    for (const double celsius : {5.0, 20.0})
        answers.push_back(draft::soaked(draft::soak_of("fishmeal micro pellet 2 mm", 500.0 * gram, celsius)));
    const Told told = soak_comparison_told(answers);
    const Told::Piece& weights = told.pieces().at(1);
    REQUIRE(weights.kind == Told::Piece::Kind::table);
    CHECK(weights.table.rows().at(1).at(0) == "fishmeal micro pellet 2 mm");
    CHECK(weights.table.rows().at(1).at(1) == "500 g");
    CHECK(weights.table.rows().at(1).at(4).find(" to ") == std::string::npos);
    CHECK(tells(told, "minutes since the water went on"));
}
