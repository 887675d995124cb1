#include "report/shown_units.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "drawn_number.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/feed_size.h"
#include "report/imperial_text.h"

using namespace baitwright;

namespace {

constexpr ShownUnits shown_both{}, shown_metric{UnitSystem::metric}, shown_imperial{UnitSystem::imperial};

/// From 10 to the power of `low` to that of `high`, evenly over the powers.
double drawn_size(double low, double high) {
    return std::pow(10.0, low + (high - low) * between(0, 1000000) / 1e6);
}

/// What stands before brackets: "0.18 oz" of "0.18 oz (5 g)".
std::string before_brackets(const std::string& text) {
    return text.substr(0, text.find(" ("));
}

}  // namespace

TEST_CASE("both systems are shown until one is chosen, and again once its scope ends") {
    CHECK(units_shown().system == UnitSystem::both);
    {
        const UnitsShownHere here(shown_imperial);
        CHECK(units_shown().feet);
        CHECK(units_shown().fahrenheit);
        CHECK(units_shown().pints);
        CHECK(units_shown().ounces);
    }
    CHECK(units_shown().system == UnitSystem::both);
    CHECK_FALSE(units_shown().feet);
}

TEST_CASE("a mass is told in grams, in ounces, or in one with the other beside it") {
    CHECK(shown_mass(400.0 * gram) == "400 g");
    CHECK(other_mass(400.0 * gram) == "14.1 oz");
    {
        const UnitsShownHere here(shown_metric);
        CHECK(shown_mass(400.0 * gram) == "400 g");
        CHECK(other_mass(400.0 * gram).empty());
        CHECK(mass_head() == "grams");
    }
    {
        const UnitsShownHere here(shown_imperial);
        CHECK(shown_mass(400.0 * gram) == "14.1 oz");
        CHECK(shown_mass(1.0 * kilogram) == "2 lb 3 oz");
        CHECK(shown_mass(390.0 * gram, 400.0 * gram) == "13.8 to 14.1 oz");
        CHECK(shown_mass(400.0 * gram, 1.0 * kilogram) == "14.1 oz to 2 lb 3 oz");
        CHECK(other_mass(400.0 * gram).empty());
        CHECK(mass_head() == "ounces");
    }
    const UnitsShownHere here(ShownUnits{.ounces = true});
    CHECK(shown_mass(400.0 * gram) == "14.1 oz");
    CHECK(other_mass(400.0 * gram) == "400 g");
}

TEST_CASE("a pinch is told in ounces with the grams that a small scale needs") {
    CHECK(shown_weighed(5.1 * gram) == "5 g");
    CHECK(shown_dose(0.3 * gram) == "0.3 g");
    CHECK(shown_dose(15.0 * millilitre) == "15 ml");
    const UnitsShownHere here(shown_imperial);
    CHECK(shown_weighed(5.1 * gram) == "0.18 oz (5 g)");
    CHECK(shown_weighed(60.0 * gram) == "2.1 oz");
    CHECK(shown_dose(0.3 * gram) == "0.011 oz (0.3 g)");
    CHECK(shown_dose(15.0 * millilitre) == "0.53 fl oz (15 ml)");
    CHECK(shown_dose(60.0 * millilitre) == "2.1 fl oz");
    CHECK(shown_pack(1.0 * kilogram) == "1 kg");  // as its label says
}

TEST_CASE("water is measured in pints and fluid ounces, and no finer than a jug shows") {
    CHECK(shown_water(735.0 * gram) == "735 ml");
    CHECK(other_water(735.0 * gram) == "1.3 pt");
    {
        const UnitsShownHere here(shown_metric);
        CHECK(other_water(735.0 * gram).empty());
    }
    const UnitsShownHere here(shown_imperial);
    CHECK(other_water(735.0 * gram).empty());
    CHECK(shown_water(735.0 * gram) == "1 pt 6 fl oz");
    CHECK(shown_water(1.0 * gram) == "0.035 fl oz");
    CHECK(shown_water(25.0 * gram) == "0.9 fl oz");
    CHECK(shown_water(355.0 * gram) == "12.5 fl oz");
    CHECK(shown_water(565.0 * gram) == "1 pt");  // 19.9 fl oz
    CHECK(shown_water(1.0 * kilogram) == "1 pt 15 fl oz");
    CHECK(shown_water(10.0 * kilogram) == "17.6 pt");
    CHECK(shown_water(290.0 * gram, 440.0 * gram) == "10 to 15.5 fl oz");
    CHECK(shown_water(435.0 * gram, 935.0 * gram) == "15.5 fl oz to 1 pt 13 fl oz");
    CHECK(shown_water(435.0 * gram, 436.0 * gram) == "about 15.5 fl oz");
    CHECK(shown_water(Mass{}, 935.0 * gram) == "0 fl oz to 1 pt 13 fl oz");
}

TEST_CASE("a volume that was asked for in pints is told in pints first") {
    CHECK(shown_volume(5.0 * imperial_pint) == "2.8 l");
    CHECK(other_volume(5.0 * imperial_pint) == "5.0 pt");
    CHECK(shown_loose(1.0 * imperial_pint) == "1.0 pt");
    {
        const UnitsShownHere here(ShownUnits{.pints = true});
        CHECK(shown_volume(5.0 * imperial_pint) == "5 pt");
        CHECK(shown_volume(0.5 * imperial_pint) == "0.5 pt");
        CHECK(shown_volume(20.0 * imperial_pint) == "20 pt");
        CHECK(shown_volume(0.4 * imperial_fluid_ounce) == "0.4 fl oz");
        CHECK(other_volume(5.0 * imperial_pint) == "2.8 l");
        CHECK(shown_vessel(250.0 * millilitre) == "250 ml");  // nobody asked for the cup in pints
        CHECK(shown_water(735.0 * gram) == "735 ml");
    }
    {
        const UnitsShownHere here(shown_metric);
        CHECK(other_volume(5.0 * imperial_pint).empty());
        CHECK(shown_loose(1.0 * imperial_pint) == "570 ml");
    }
    const UnitsShownHere here(shown_imperial);
    CHECK(shown_volume(2.6 * litre) == "4.6 pt");
    CHECK(shown_volume(2.6 * litre, 3.6 * litre) == "4.6 to 6.3 pt");
    CHECK(shown_vessel(250.0 * millilitre) == "8.8 fl oz");
    CHECK(shown_helping(5.0 * millilitre) == "0.18 fl oz");
    CHECK(shown_size(FeedSize{250.0 * millilitre}) == "8.8 fl oz");
    CHECK(other_volume(2.6 * litre).empty());
}

TEST_CASE("lengths asked for in feet are told in feet and inches, and never as 12 inches") {
    CHECK(shown_as_told(8.0 * foot) == "2.44 m");
    CHECK(shown_as_told(2.5 * metre) == "2.5 m");
    CHECK(shown_hand() == "10 x 10 cm");
    const UnitsShownHere here(ShownUnits{.feet = true});
    CHECK(shown_as_told(8.0 * foot) == "8 ft");
    CHECK(shown_as_told(2.4384 * metre) == "8 ft");
    CHECK(shown_as_told(12.25 * foot) == "12 ft 3 in");
    CHECK(shown_length(22.0 * inch) == "1 ft 10 in");
    CHECK(shown_length(11.4 * inch) == "11 in");
    CHECK(shown_length(11.6 * inch) == "1 ft");
    CHECK(shown_length(23.7 * inch) == "2 ft");
    CHECK(shown_length(119.3 * inch) == "9 ft 11 in");
    CHECK(shown_length(119.8 * inch) == "10 ft");
    CHECK(shown_length(12.3 * foot) == "12 ft");
    CHECK(shown_length(5.0 * millimetre) == "0.2 in");
    CHECK(shown_length(-22.0 * inch) == "1 ft 10 in");
    CHECK(shown_length(4.0 * inch, 9.2 * inch) == "4 to 9 in");
    CHECK(shown_length(9.0 * inch, 22.0 * inch) == "9 in to 1 ft 10 in");
    CHECK(shown_length(12.0 * foot, 15.0 * foot) == "12 to 15 ft");
    // An end in two units is told whole: "1 to 2 ft 3 in" would begin at a foot.
    CHECK(shown_length(15.0 * inch, 27.0 * inch) == "1 ft 3 in to 2 ft 3 in");
    CHECK(ounces_text(19.0 * ounce, 35.0 * ounce) == "1 lb 3 oz to 2 lb 3 oz");
    CHECK(ounces_text(1.0 * pound, 2.0 * pound) == "1 to 2 lb");
    CHECK(measured_pints_text(625.0 * millilitre, 1190.0 * millilitre) == "1 pt 2 fl oz to 2 pt 2 fl oz");
    CHECK(shown_length(22.0 * inch, 22.3 * inch) == "about 1 ft 10 in");
    CHECK(shown_hand() == "4 x 4 in");
}

TEST_CASE("temperatures asked for in degF are told in whole ones") {
    CHECK(shown_temperature(Temperature::from_celsius(8)) == "8 degC");
    const UnitsShownHere here(ShownUnits{.fahrenheit = true});
    CHECK(shown_temperature(Temperature::from_celsius(8)) == "46 degF");
    CHECK(shown_temperature(Temperature::from_fahrenheit(46)) == "46 degF");
    CHECK(shown_temperature(Temperature::from_fahrenheit(-0.3)) == "0 degF");
}

TEST_CASE("an ounce short of a pound is a pound, and what is there at all is not nothing") {
    CHECK(shown_ounces(15.94 * ounce) == "15.9 oz");
    CHECK(shown_ounces(15.96 * ounce) == "1 lb");
    CHECK(shown_ounces(31.6 * ounce) == "2 lb");
    CHECK(shown_ounces(0.3 * gram) == "0.011 oz");
    CHECK(shown_ounces(0.002 * gram) == "0.000071 oz");
    CHECK(measured_pints_text(0.1 * millilitre) == "0.0035 fl oz");
    CHECK(feet_text(0.1 * millimetre) == "0.004 in");
}

TEST_CASE("what is not there takes no place in brackets") {
    CHECK(in_brackets({}).empty());
    CHECK(in_brackets({"", ""}).empty());
    CHECK(in_brackets({"14.1 oz", ""}) == " (14.1 oz)");
    CHECK(in_brackets({"14.1 oz", "1.3 pt"}) == " (14.1 oz, 1.3 pt)");
}

TEST_CASE("the parser reads every amount back within the rounding of the system that tells it") {
    CHECK(rc::check("masses", [] {
        const Mass mass = drawn_size(-1, 4.5) * gram;
        for (const ShownUnits& units : {shown_both, shown_metric, shown_imperial}) {
            const UnitsShownHere here(units);
            const double told = parse<Mass>(shown_mass(mass)).in(gram), grams = mass.in(gram);
            const double step = !units_shown().ounces  ? std::max(0.5, 0.005 * grams)
                                : mass < 0.095 * ounce ? 0.05 * grams
                                : mass < 15.95 * ounce ? 0.05 * 28.35
                                                       : 0.5 * 28.35;
            RC_ASSERT(std::abs(told - grams) <= step * 1.0001);
            RC_ASSERT(told > 0);
        }
    }));
    CHECK(rc::check("doses, before their brackets", [] {
        const Mass mass = drawn_size(-1, 3) * gram;
        for (const ShownUnits& units : {shown_both, shown_metric, shown_imperial}) {
            const UnitsShownHere here(units);
            const double told = parse<Mass>(before_brackets(shown_dose(mass))).in(gram), grams = mass.in(gram);
            RC_ASSERT(told > 0);
            RC_ASSERT(std::abs(told - grams) <= 0.05 + 0.08 * grams);
        }
    }));
    CHECK(rc::check("water to be measured", [] {
        const Mass water = drawn_size(0, 4.5) * gram;
        for (const ShownUnits& units : {shown_both, shown_metric, shown_imperial}) {
            const UnitsShownHere here(units);
            const double told = parse<Volume>(shown_water(water)).in(millilitre), real = water.in(gram);
            const double step = units.system != UnitSystem::imperial ? std::max(0.5, 0.005 * real)
                                : real < 0.095 * 28.413              ? 0.05 * real
                                : real < 4.95 * 28.413               ? 0.05 * 28.413
                                : real < 19.75 * 28.413              ? 0.25 * 28.413
                                                                     : std::max(0.5 * 28.413, 0.005 * real);
            RC_ASSERT(told > 0);
            RC_ASSERT(std::abs(told - real) <= step * 1.0001);
        }
    }));
    CHECK(rc::check("volumes made, to two digits", [] {
        const Volume volume = drawn_size(0, 5) * millilitre;
        for (const ShownUnits& units : {shown_both, shown_metric, shown_imperial}) {
            const UnitsShownHere here(units);
            const double told = parse<Volume>(shown_volume(volume)).in(millilitre), real = volume.in(millilitre);
            RC_ASSERT(std::abs(told - real) <= 0.05001 * real);
        }
    }));
    CHECK(rc::check("lengths, to two digits or to the inch", [] {
        const Length length = drawn_size(-2.3, 2) * metre;
        for (const ShownUnits& units : {shown_both, shown_metric, shown_imperial}) {
            const UnitsShownHere here(units);
            const double told = parse<Length>(shown_length(length)).in(metre), real = length.in(metre);
            const double step = units_shown().feet ? std::max(0.5 * 0.0254, 0.05 * real) : std::max(0.005, 0.05 * real);
            RC_ASSERT(std::abs(told - real) <= step * 1.0001);
            RC_ASSERT(told > 0 || !units_shown().feet);
            const double as_told = parse<Length>(shown_as_told(length)).in(metre);
            RC_ASSERT(std::abs(as_told - real) <= (units_shown().feet ? 0.5 * 0.0254 : 0.005) * 1.0001);
        }
    }));
    CHECK(rc::check("temperatures", [] {
        const double celsius = between(-500, 6000) / 100.0;
        for (const ShownUnits& units : {shown_both, shown_metric, shown_imperial}) {
            const UnitsShownHere here(units);
            const std::string text = shown_temperature(Temperature::from_celsius(celsius));
            RC_ASSERT(std::abs(parse<Temperature>(text).in_celsius() - celsius) <= 0.5 / 1.8 + 1e-9);
            RC_ASSERT(text.substr(0, 3) != "-0 ");
        }
    }));
}
