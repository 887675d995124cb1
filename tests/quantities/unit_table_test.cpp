#include "quantities/unit_table.h"

#include <catch2/catch.hpp>
#include <map>
#include <string>

#include "quantities/quantity_text.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

double in_si(const std::string& measure, const std::string& text) {
    if (measure == "mass") return parse<Mass>(text).si();
    if (measure == "length") return parse<Length>(text).si();
    if (measure == "volume") return parse<Volume>(text).si();
    if (measure == "time") return parse<Time>(text).si();
    if (measure == "speed") return parse<Speed>(text).si();
    if (measure == "pressure") return parse<Pressure>(text).si();
    if (measure == "temperature") return parse<Temperature>(text).in_kelvin();
    throw std::runtime_error("the reference has a measure that the test does not know: " + measure);
}

/// The metric units of the reference by the definition of their prefixes, not by our own table.
const std::map<std::string, double> metric{{"kg", 1},    {"g", 1e-3}, {"m", 1},  {"mm", 1e-3}, {"s", 1},
                                           {"ml", 1e-6}, {"m/s", 1},  {"Pa", 1}, {"K", 1}};

}  // namespace

// Sources: tests/reference/units.csv, row by row.
TEST_CASE("units are as large as the law and the standards say") {
    const auto rows = reference::rows_in("units.csv");
    REQUIRE(rows.size() >= 20);
    for (const auto& row : rows) {
        CAPTURE(row.at("id"), row.at("text"), row.at("source"));
        const double expected = std::stod(row.at("expected")) * metric.at(row.at("unit"));
        CHECK(in_si(row.at("measure"), row.at("text")) ==
              Approx(expected).epsilon(std::stod(row.at("relative_tolerance"))).margin(0));
    }
}

TEST_CASE("a unit is found by its symbol and its names, whatever their case") {
    CHECK(unit_called("kg")->symbol == "kg");
    CHECK(unit_called("KG")->symbol == "kg");
    CHECK(unit_called("mL")->symbol == "ml");
    CHECK(unit_called("Litres")->symbol == "l");
    CHECK(unit_called("fl oz")->symbol == "floz");
    CHECK(unit_called("°C")->symbol == "degC");
    CHECK(unit_called("°F")->symbol == "degF");
    CHECK(unit_called("kg/m³")->symbol == "kg/m3");
    CHECK(unit_called("kJ/mol")->symbol == "kJ/mol");
    CHECK_FALSE(unit_called("grm"));
    CHECK_FALSE(unit_called(""));
}

TEST_CASE("a mistyped unit is taken for the nearest one that measures what is needed") {
    CHECK(unit_nearest("grm", Measure::mass)->symbol == "g");
    CHECK(unit_nearest("gm", Measure::mass)->symbol == "g");
    CHECK(unit_nearest("kgs", Measure::mass)->symbol == "kg");
    CHECK(unit_nearest("pnit", Measure::volume)->symbol == "pt");
    CHECK(unit_nearest("mll", Measure::volume)->symbol == "ml");
    CHECK_FALSE(unit_nearest("q", Measure::mass));
    CHECK_FALSE(unit_nearest("bucket", Measure::volume));
}

TEST_CASE("each measure names units that fit it, and its example can be read") {
    CHECK(units_that_fit(Measure::mass) == "a mass is written in g, kg, oz or lb");
    CHECK(units_that_fit(Measure::volume) == "a volume is written in ml, l, pt or floz");
    CHECK(units_that_fit(Measure::length) == "a length is written in mm, cm, m, in or ft");
    CHECK(units_that_fit(Measure::time) == "a time is written in s, min, h or d");
    CHECK(units_that_fit(Measure::ratio) == "a ratio is written in % or g/g");
    CHECK(units_that_fit(Measure::temperature) == "a temperature is written in degC, degF or K");
    CHECK(parse<Mass>(measure_example(Measure::mass)).si() > 0);
    CHECK(parse<Length>(measure_example(Measure::length)).si() > 0);
    CHECK(parse<Volume>(measure_example(Measure::volume)).si() > 0);
    CHECK(parse<Time>(measure_example(Measure::time)).si() > 0);
    CHECK(parse<Density>(measure_example(Measure::density)).si() > 0);
    CHECK(parse<Speed>(measure_example(Measure::speed)).si() > 0);
    CHECK(parse<Diffusivity>(measure_example(Measure::diffusivity)).si() > 0);
    CHECK(parse<MolarEnergy>(measure_example(Measure::molar_energy)).si() > 0);
    CHECK(parse<Pressure>(measure_example(Measure::pressure)).si() > 0);
    CHECK(parse<Ratio>(measure_example(Measure::ratio)).si() > 0);
    CHECK(parse<Temperature>(measure_example(Measure::temperature)).in_kelvin() > 0);
}
