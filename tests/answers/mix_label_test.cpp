#include <catch2/catch.hpp>

#include "answers/asking.h"

using namespace baitwright;
using draft::request_for;
using draft::scaled;
using draft::warns;

namespace {

/// Crumb with sweet liquid at one rate, on a shelf where its label allows another.
MixAnswer dosed(const char* rate, const char* label, double already_in_ml = 0,
                const Recipe& base = draft::crumb_mix()) {
    MemoryShelf shelf(&draft::shelf());
    Ingredient sweet = draft::shelf().ingredient("sweet liquid");
    sweet.label_dose = parse_dose_rate(label);
    shelf.put(sweet);
    Recipe recipe = base;
    recipe.doses.push_back({"sweet liquid", parse_dose_rate(rate)});
    MixRequest request = request_for(DryMass{1.0 * kilogram}, "firm");
    request.already_added = already_in_ml * millilitre;
    return scaled(recipe, request, shelf);
}

}  // namespace

TEST_CASE("a dose up to its label's most is let be, above it is warned of and the answer is no") {
    CHECK_FALSE(warns(dosed("25 ml per kg dry", "25 ml per kg dry"), "over-label"));
    CHECK_FALSE(warns(dosed("24 ml per kg dry", "25 ml per kg dry"), "over-label"));
    const MixAnswer over = dosed("26 ml per kg dry", "25 ml per kg dry");
    REQUIRE(warns(over, "over-label"));
    for (const Warning& warning : over.warnings)
        if (warning.code == "over-label") {
            CHECK(warning.answer_is_no);
            CHECK_THAT(warning.message, Catch::Contains("104 %") && Catch::Contains("25 ml per kg dry"));
        }
}

// By hand: 1 kg dry at 25 ml a kilo is 25 ml; 2 ml of 90 is 45 times.
TEST_CASE("a dose far above its label tells how many times, and how much is allowed") {
    const auto told = [](const char* rate, const char* label) {
        for (const Warning& warning : dosed(rate, label).warnings)
            if (warning.code == "over-label") return warning.message;
        return std::string();
    };
    CHECK_THAT(told("90 ml per kg dry", "2 ml per kg dry"),
               Catch::Contains("45 times the label's most") && Catch::Contains("at most 2 ml here"));
    CHECK_THAT(told("26 ml per kg dry", "25 ml per kg dry"), Catch::Contains("at most 25 ml here"));
    CHECK_THAT(told("50 ml per kg dry", "12.38 ml per kg dry"), Catch::Contains("at most 12 ml here"));
}

// By hand: firm crumb takes about 0.74 l of water a kilo dry, so 50 ml a litre is about 36 ml a kilo dry.
TEST_CASE("a dose and its label may go by different measures") {
    CHECK(warns(dosed("50 ml per l water", "30 ml per kg dry"), "over-label"));
    CHECK_FALSE(warns(dosed("50 ml per l water", "40 ml per kg dry"), "over-label"));
    CHECK(warns(dosed("40 ml per kg dry", "50 ml per l water"), "over-label"));
    CHECK_FALSE(warns(dosed("30 ml per kg dry", "50 ml per l water"), "over-label"));
}

TEST_CASE("a dose by the litre is not over its label for water that was in already") {
    CHECK_FALSE(warns(dosed("50 ml per l water", "50 ml per l water", 300), "over-label"));
}

TEST_CASE("the answer says the rate as the recipe has it") {
    const MixAnswer answer = dosed("25 ml per kg dry", "30 ml per kg dry");
    REQUIRE(answer.additives.size() == 1);
    CHECK(answer.additives.front().rate == "25 ml per kg dry");
    CHECK(answer.additives.front().volume.in(millilitre) == Approx(25));
    CHECK(answer.additives.front().wetting.in(gram) == Approx(22.5));
}

TEST_CASE("a powder that is dosed wets nothing and lies loose") {
    Recipe recipe = draft::crumb_mix();
    recipe.doses.push_back({"salt", parse_dose_rate("2 %")});
    const MixAnswer answer = scaled(recipe, request_for(DryMass{1.0 * kilogram}, "firm"));
    CHECK(answer.additives.front().mass.in(gram) == Approx(20));
    CHECK(answer.additives.front().volume.in(millilitre) == Approx(20 / 1.2));
    CHECK(answer.additives.front().wetting == Mass{});
    CHECK_FALSE(answer.additives.front().liquid);
    CHECK(answer.water_to_add.in(gram) ==
          Approx(draft::kilo(draft::crumb_mix(), "firm").water_to_add.in(gram)).epsilon(1e-12));
}
