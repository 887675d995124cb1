// Amounts as people type them: units as they are abbreviated, parts without blanks, and numbers in words. The sizes of
// the units are held against the law in unit_table_test.cpp; here they are multiples by hand.
#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <string>
#include <vector>

#include "quantities/amount_words.h"
#include "quantities/fault_of.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

struct TypedAmount {
    const char* typed;
    Measure measure;
    double in_si;
};

double read_as(Measure measure, const std::string& typed) {
    if (measure == Measure::mass) return parse<Mass>(typed).si();
    if (measure == Measure::volume) return parse<Volume>(typed).si();
    if (measure == Measure::length) return parse<Length>(typed).si();
    if (measure == Measure::temperature) return parse<Temperature>(typed).in_kelvin();
    return parse<Time>(typed).si();
}

constexpr double pint_si = imperial_pint.in_si, pound_si = pound.in_si;

}  // namespace

TEST_CASE("units are read as they are abbreviated") {
    const TypedAmount row = GENERATE(values<TypedAmount>({
        {"2pts", Measure::volume, 2 * pint_si},
        {"1 pint", Measure::volume, pint_si},
        {"3 PINTS", Measure::volume, 3 * pint_si},
        {"3 ltr", Measure::volume, 3e-3},
        {"2ltrs", Measure::volume, 2e-3},
        {"250mls", Measure::volume, 250e-6},
        {"5 cc", Measure::volume, 5e-6},
        {"500gms", Measure::mass, 0.5},
        {"500 gm", Measure::mass, 0.5},
        {"2kgs", Measure::mass, 2},
        {"16ozs", Measure::mass, pound_si},
        {"2hrs", Measure::time, 7200},
        {"1 hr", Measure::time, 3600},
        {"20mins", Measure::time, 1200},
        {"90 secs", Measure::time, 90},
        {"10ins", Measure::length, 0.254},
        {"1 foot", Measure::length, 0.3048},
        {"8 feet", Measure::length, 2.4384},
        {"12 deg C", Measure::temperature, 285.15},
        {"12 degrees c", Measure::temperature, 285.15},
        {"12 \u00b0 C", Measure::temperature, 285.15},
        {"50 deg F", Measure::temperature, 283.15},
        {"12 centigrade", Measure::temperature, 285.15},
    }));
    CAPTURE(row.typed);
    CHECK(read_as(row.measure, row.typed) == Approx(row.in_si).epsilon(1e-12));
}

TEST_CASE("parts may be written without blanks, and with the marks of feet and inches") {
    const TypedAmount row = GENERATE(values<TypedAmount>({
        {"8ft6in", Measure::length, 2.5908},
        {"8ft 6in", Measure::length, 2.5908},
        {"8ft6 in", Measure::length, 2.5908},
        {"8'6\"", Measure::length, 2.5908},
        {"8' 6\"", Measure::length, 2.5908},
        {"8'", Measure::length, 2.4384},
        {"6\"", Measure::length, 0.1524},
        {"8\u2032 6\u2033", Measure::length, 2.5908},
        {"8\u2019", Measure::length, 2.4384},
        {"1lb4oz", Measure::mass, 1.25 * pound_si},
        {"1lb4.5oz", Measure::mass, (16 + 4.5) / 16 * pound_si},
        {"-1lb4oz", Measure::mass, -1.25 * pound_si},
        {"1h30m", Measure::time, 5400},
        {"1 h 30 m", Measure::time, 5400},
        {"2h30", Measure::time, 9000},
        {"2 h 30", Measure::time, 9000},
        {"2hrs30mins", Measure::time, 9000},
        {"1h05m10s", Measure::time, 3910},
        {"1d2h", Measure::time, 93600},
        {"1gal2pt", Measure::volume, 10 * pint_si},
    }));
    CAPTURE(row.typed);
    CHECK(read_as(row.measure, row.typed) == Approx(row.in_si).epsilon(1e-12));
}

TEST_CASE("an amount may be said in words") {
    const TypedAmount row = GENERATE(values<TypedAmount>({
        {"half a kilo", Measure::mass, 0.5},
        {"Half A Kilo", Measure::mass, 0.5},
        {"half kilo", Measure::mass, 0.5},
        {" half  a\tkilo ", Measure::mass, 0.5},
        {"a kilo", Measure::mass, 1},
        {"half a pint", Measure::volume, pint_si / 2},
        {"half of a pint", Measure::volume, pint_si / 2},
        {"a half pint", Measure::volume, pint_si / 2},
        {"a pint", Measure::volume, pint_si},
        {"one pint", Measure::volume, pint_si},
        {"quarter of a pint", Measure::volume, pint_si / 4},
        {"a quarter pint", Measure::volume, pint_si / 4},
        {"a quarter of a pint", Measure::volume, pint_si / 4},
        {"three quarters of a litre", Measure::volume, 0.75e-3},
        {"three-quarters of a litre", Measure::volume, 0.75e-3},
        {"two thirds of a litre", Measure::volume, 2e-3 / 3},
        {"a pint and a half", Measure::volume, 1.5 * pint_si},
        {"two pints", Measure::volume, 2 * pint_si},
        {"two and a half pints", Measure::volume, 2.5 * pint_si},
        {"2 and a half pints", Measure::volume, 2.5 * pint_si},
        {"2 pints and a quarter", Measure::volume, 2.25 * pint_si},
        {"half a fluid ounce", Measure::volume, pint_si / 40},
        {"half an ounce", Measure::mass, pound_si / 32},
        {"half an hour", Measure::time, 1800},
        {"three quarters of an hour", Measure::time, 2700},
        {"an hour and a half", Measure::time, 5400},
        {"a foot", Measure::length, 0.3048},
        {"half an inch", Measure::length, 0.0127},
    }));
    CAPTURE(row.typed);
    CHECK(read_as(row.measure, row.typed) == Approx(row.in_si).epsilon(1e-12));
}

TEST_CASE("what only looks like an amount is refused as before") {
    struct Row {
        const char* typed;
        const char* code;
    };
    const Row row = GENERATE(values<Row>({
        {"half a pint", "wrong-dimension"},
        {"8ft6in", "wrong-dimension"},
        {"half a bucket", "not-a-number"},
        {"half", "not-a-number"},
        {"half of kilo", "not-a-number"},
        {"a", "not-a-number"},
        {"a kilo and", "not-a-number"},
        {"half a kilo and a half", "not-a-number"},
        {"a kilo or so", "not-a-number"},
        {"a g", "not-a-number"},
        {"a few kilos", "not-a-number"},
        {"half a degC", "not-a-number"},
        {"two quarters of a kilo", "not-a-number"},
        {"1lb4", "unknown-unit"},
        {"1lb4foo", "unknown-unit"},
        {"4oz1lb", "out-of-order"},
        {"1lb1lb", "out-of-order"},
        {"1 m2", "unknown-unit"},
        {"1,5 kg", "not-a-number"},
    }));
    CAPTURE(row.typed);
    const Fault fault = fault_of([&] { parse<Mass>(row.typed); });
    CHECK(fault.code == row.code);
    CHECK(fault.hint != "");
}

TEST_CASE("bare minutes stand only behind hours, and an m is minutes only there") {
    CHECK(fault_of([] { parse<Time>("30m"); }).code == "wrong-dimension");
    CHECK(fault_of([] { parse<Time>("1d 30m"); }).code == "wrong-dimension");
    CHECK(fault_of([] { parse<Time>("2h 5"); }).code == "no-unit");
    CHECK(fault_of([] { parse<Time>("2h 75"); }).code == "no-unit");
    CHECK(fault_of([] { parse<Time>("20min 30"); }).code == "no-unit");
    CHECK(fault_of([] { parse<Time>("2h 30 40"); }).code == "not-a-number");
}

TEST_CASE("a cup and a ball may be said in words too") {
    CHECK(parse_vessel_size("half a pint").si() == Approx(pint_si / 2));
    CHECK(parse_ball_size("two inches").si() == Approx(0.0508));
    CHECK(fault_of([] { parse_vessel_size("half a bucket"); }).code == "unknown-size");
}

TEST_CASE("what a text is an amount of is known without knowing what is wanted") {
    CHECK(measured_in("1.5 kg") == Measure::mass);
    CHECK(measured_in("half a pint") == Measure::volume);
    CHECK(measured_in("8ft6in") == Measure::length);
    CHECK(measured_in("60 %") == Measure::ratio);
    CHECK(measured_in("8 deg C") == Measure::temperature);
    for (const char* none : {"", "1.5", "half", "silt bed", "1.5 kg silt", "1 lb 4", "4 oz 1 lb", "1,5 kg"}) {
        CAPTURE(none);
        CHECK_FALSE(measured_in(none));
    }
}

namespace {

const std::vector<std::pair<std::string, std::string>> said_numbers{
    {"half a ", "0.5 "},        {"a ", "1 "},
    {"quarter of a ", "0.25 "}, {"three quarters of a ", "0.75 "},
    {"seven ", "7 "},           {"two and a half ", "2.5 "}};

struct LargeAndSmall {
    Measure measure;
    std::string large, small;
};
const std::vector<LargeAndSmall> part_pairs{
    {Measure::mass, "lb", "oz"},     {Measure::mass, "kgs", "gms"}, {Measure::mass, "st", "lbs"},
    {Measure::length, "ft", "in"},   {Measure::length, "'", "\""},  {Measure::length, "m", "cm"},
    {Measure::time, "h", "min"},     {Measure::time, "hrs", "m"},   {Measure::time, "d", "h"},
    {Measure::volume, "gal", "pts"}, {Measure::volume, "l", "mls"},
};

}  // namespace

TEST_CASE("parts that are glued read as the same that are spaced") {
    CHECK(rc::check([] {
        const LargeAndSmall units = *rc::gen::elementOf(part_pairs);
        const std::string large = std::to_string(*rc::gen::inRange(0, 1000)),
                          small = number_text(*rc::gen::inRange(0, 1000) / 4.0);
        const std::string glued = large + units.large + small + units.small,
                          spaced = large + ' ' + units.large + ' ' + small + ' ' + units.small;
        RC_LOG() << glued << " and " << spaced << '\n';
        RC_ASSERT(read_as(units.measure, glued) == read_as(units.measure, spaced));
        RC_ASSERT(measured_in(glued) == units.measure);
    }));
}

TEST_CASE("a number in words reads as the same in figures") {
    CHECK(rc::check([] {
        const auto said = *rc::gen::elementOf(said_numbers);
        const auto unit = *rc::gen::element<std::string>("kg", "kilo", "pint", "ounce", "litre", "foot", "hour");
        const Measure measure = unit_called(unit)->measure;
        RC_ASSERT(read_as(measure, said.first + unit) == read_as(measure, said.second + unit));
    }));
}
