#include <catch2/catch.hpp>

#include "quantities/units.h"
#include "report/replies.h"

using namespace baitwright;

namespace {

DryAnswer dried_from_to(const char* feel, const char* becomes) {
    DryAnswer answer;
    answer.recipe = "silt bed";
    answer.feel = feel;
    answer.becomes = becomes;
    answer.dry_mass = 1.0 * kilogram;
    answer.hours = 2.0 * hour;
    answer.lost = {40.0 * gram, 90.0 * gram};
    answer.to_spray = {50.0 * gram, 110.0 * gram};
    answer.warnings.push_back({"stays", "it may not leave its feel within 48 hours"});
    return answer;
}

std::string spray_line(const DryAnswer& answer) {
    const Told told = dry_reply(answer).told();
    for (const Told::Piece& piece : told.pieces())
        if (piece.label == "Spray") return piece.text;
    return "";
}

}  // namespace

TEST_CASE("a mix that keeps its feel is told to stay it, not to end up what it is") {
    const std::string text = spray_line(dried_from_to("firm", "firm"));
    INFO(text);
    CHECK(text.find("stays firm") != std::string::npos);
    CHECK(text.find("end up") == std::string::npos);
}

TEST_CASE("a mix that dries out of its feel is told what it could end up as, and what it loses alone") {
    const std::string text = spray_line(dried_from_to("firm", "crumbly"));
    INFO(text);
    CHECK(text.find("Give it back 50 to 110 ml") != std::string::npos);
    CHECK(text.find("Left alone it loses 40 to 90 ml and could end up crumbly") != std::string::npos);
}

TEST_CASE("where nothing is lost nobody is told to give 0 ml back") {
    DryAnswer answer = dried_from_to("firm", "firm");
    answer.lost = answer.to_spray = answer.loss_per_hour = {};
    CHECK(spray_line(answer) == "It needs none back. Left alone it stays firm.");
    CHECK(dry_reply(answer).told().text().find("0 ml") == std::string::npos);
}
