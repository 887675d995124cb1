#include <catch2/catch.hpp>

#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/shown_units.h"

using namespace baitwright;

TEST_CASE("a pack is told back as its label has it, in whichever system that is round") {
    for (const char* label : {"1 oz", "1.5 oz", "4 oz", "8 oz", "1 lb", "1.5 lb", "2 lb", "5 lb", "100 g", "340 g",
                              "500 g", "900 g", "1 kg", "2.5 kg", "25 kg"})
        CHECK(shown_pack(parse<Mass>(label)) == label);
    for (const char* label : {"0.5 pt", "1 pt", "1.5 pt", "2 pt", "100 ml", "500 ml", "570 ml", "1 l", "2.5 l"})
        CHECK(shown_pack(Pack{parse<Volume>(label), {}, {}, {}}) == label);
    CHECK(shown_pack(20.0 * ounce) == "1 lb 4 oz");
    CHECK(shown_pack(0.5 * pound) == "8 oz");
}

TEST_CASE("a pack told in pounds is known again by six digits, and one that is round in neither stays in grams") {
    CHECK(shown_pack(453.592 * gram) == "1 lb");
    CHECK(shown_pack(Pack{568.261 * millilitre, {}, {}, {}}) == "1 pt");
    CHECK(shown_pack(454.0 * gram) == "454 g");
    CHECK(shown_pack(123.4 * gram) == "123.4 g");
    CHECK(shown_pack(Pack{568.0 * millilitre, {}, {}, {}}) == "568 ml");
}

TEST_CASE("a pack is typed as that very size, by its label where that says all") {
    const auto typed = [](auto size) { return typed_pack(Pack{size, {}, {}, {}}); };
    for (const char* label : {"1 pt 5 fl oz", "1 pt 13 fl oz", "5 fl oz", "0.5 pt", "500 ml"})
        CHECK(typed(parse<Volume>(label)) == label);
    for (const char* label : {"2.5 kg", "8 oz", "1 lb 4 oz"}) CHECK(typed(parse<Mass>(label)) == label);
    CHECK(typed(1.25 * imperial_pint) == "1 pt 5 fl oz");
    for (const double millilitres : {123.456, 738.7, 1234.5678, 0.5})
        CHECK(parse<Volume>(typed(millilitres * millilitre)).si() == Approx(millilitres * 1e-6).epsilon(1e-9));
    for (const double grams : {123.456, 0.3, 4321.0987})
        CHECK(parse<Mass>(typed(grams * gram)).si() == Approx(grams * 1e-3).epsilon(1e-9));
}

TEST_CASE("a pack's label does not change with the units shown") {
    const UnitsShownHere here({UnitSystem::imperial});
    CHECK(shown_pack(1.0 * kilogram) == "1 kg");
    CHECK(shown_pack(1.0 * pound) == "1 lb");
    CHECK(shown_pack(Pack{500.0 * millilitre, {}, {}, {}}) == "500 ml");
}
