#include <catch2/catch.hpp>

#include "files/advice_reader.h"
#include "files/library_file.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

const std::string whole_advice = R"([[advice]]
about = "amount"
say = "Feed half."
why = "it is cold"
when = { season = ["winter"], temperature_below = "8 degC", fish = ["roach", "bream"] }
share = { low = "33 %", high = "50 %" }
favour = ["cold water"]
against = ["margin"]
)";

std::vector<Fault> advice_faults(const std::string& text) {
    return read_library_file(text, "rules.toml").faults;
}

}  // namespace

TEST_CASE("an advice is read with all it says") {
    CHECK(advice_faults(whole_advice).empty());
    const auto rules = read_advice_rules(whole_advice, "rules.toml");
    REQUIRE(rules.size() == 1);
    const AdviceRule& rule = rules.front();
    CHECK(rule.about == "amount");
    CHECK(rule.source == "common practice, no source");
    CHECK(rule.when.season == std::vector<std::string>{"winter"});
    CHECK(rule.when.fish.size() == 2);
    REQUIRE(rule.when.temperature.below);
    CHECK(rule.when.temperature.below->in_celsius() == Approx(8));
    CHECK_FALSE(rule.when.temperature.from);
    REQUIRE(rule.share);
    CHECK(rule.share->low == Approx(0.33));
    CHECK(rule.favour == std::vector<std::string>{"cold water"});
    CHECK(rule.against == std::vector<std::string>{"margin"});
}

TEST_CASE("every fault of an advice is told in its place") {
    const auto faults = advice_faults(R"([[advice]]
about = "weather"
say = "Feed half."
when = { season = ["wintre"], depth_from = 3, tow_from = "2 cm/s", tow_below = "1 cm/s", moon = "full" }
share = { low = "50 %", high = "30 %" }
favour = "cold water"
)");
    std::vector<std::pair<std::string, int>> found;
    for (const Fault& fault : faults) found.emplace_back(fault.code, fault.line);
    const std::vector<std::pair<std::string, int>> wanted{
        {"missing-value", 1},       {"unknown-word", 2}, {"unknown-word", 4}, {"no-unit", 4},
        {"inconsistent-values", 4}, {"unknown-key", 4},  {"out-of-range", 5}, {"wrong-type", 6}};
    CHECK(found == wanted);
    CHECK(read_advice_rules("[[advice]]\nabout = \"size\"\n", "x").empty());
}

TEST_CASE("what an advice gives way to and speaks against is read, and a limit in braces must be its own") {
    const std::string small = R"([[advice]]
about = "size"
say = "No more than {against_above} at a time, in less than {depth_below}."
why = "each splash is heard"
when = { depth_below = "1 m" }
unless = { bed = ["dark"], tow_from = "10 cm/s" }
against_forms = ["ball"]
against_above = "25 ml"
)";
    CHECK(advice_faults(small).empty());
    const auto rules = read_advice_rules(small, "rules.toml");
    REQUIRE(rules.size() == 1);
    CHECK(rules[0].unless.bed == std::vector<std::string>{"dark"});
    CHECK(rules[0].unless.tow.from.has_value());
    CHECK(rules[0].against_forms == std::vector<FeedForm>{FeedForm::ball});
    REQUIRE(rules[0].against_above);
    CHECK(rules[0].against_above->in(millilitre) == Approx(25));
    const auto faults = advice_faults(R"([[advice]]
about = "size"
say = "Feed small."
why = "in less than {depth_from} each splash is heard"
when = { depth_below = "1 m" }
unless = { moon = "full" }
against_forms = ["bucket"]
)");
    std::vector<std::pair<std::string, int>> found;
    for (const Fault& fault : faults) found.emplace_back(fault.code, fault.line);
    const std::vector<std::pair<std::string, int>> wanted{{"unknown-word", 4}, {"unknown-key", 6}, {"unknown-word", 7}};
    CHECK(found == wanted);
}
