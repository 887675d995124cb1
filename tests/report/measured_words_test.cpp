#include "report/measured_words.h"

#include <catch2/catch.hpp>

#include "quantities/quantity_text.h"
#include "report/shown_units.h"

using namespace baitwright;

// By hand: 8 degC are 46.4 degF; 2.44 m are 8.005 ft; 25 ml are 0.88 fl oz; 44.7 cm/s are 1 mph.
TEST_CASE("amounts in words are told in the units of who asks, and in JSON never in any but metric ones") {
    const MeasuredText text{
        "below {}, in {} of water, {} at a time, tow {}, {}",
        {Temperature::from_celsius(8), 2.44 * metre, 25.0 * millilitre, parse<Speed>("44.7 cm/s"), 3.0 * hour}};
    const std::string metric = "below 8 degC, in 2.44 m of water, 25 ml at a time, tow 44.7 cm/s, 3 h";
    CHECK(shown_words(text) == metric);
    ShownUnits units;
    units.system = UnitSystem::imperial;
    const UnitsShownHere imperial(units);
    CHECK(shown_words(text) == "below 46 degF, in 8 ft of water, 0.88 fl oz at a time, tow 1 mph, 3 h");
    CHECK(metric_words(text) == metric);
    CHECK(shown_words("more {} than amounts") == "more {} than amounts");
}
