#include "quantities/quantity_text.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <string>

#include "quantities/fault_of.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

bool near_to(double value, double expected) {
    return std::abs(value - expected) <= 1e-12 * std::abs(expected);
}

/// Any size that a bait can have, and far beyond, evenly over its powers of ten.
rc::Gen<double> sizes() {
    return rc::gen::map(
        rc::gen::pair(rc::gen::inRange<std::int64_t>(-999999999999999, 999999999999999), rc::gen::inRange(-40, 20)),
        [](const auto& pair) { return static_cast<double>(pair.first) * std::pow(10.0, pair.second); });
}

template <class D>
void check_there_and_back(Unit<D> unit, const std::string& symbol) {
    CAPTURE(symbol);
    CHECK(rc::check([&] {
        const auto quantity = *sizes() * unit;
        const auto text = exact_text(quantity, unit, symbol);
        RC_LOG() << text << '\n';
        RC_ASSERT(near_to(parse<Quantity<D>>(text).si(), quantity.si()));
    }));
}

}  // namespace

TEST_CASE("quantities are read in the units of the trade") {
    CHECK(parse<Mass>("400 g").in(gram) == Approx(400));
    CHECK(parse<Mass>("2.5kg").in(kilogram) == Approx(2.5));
    CHECK(parse<Mass>("1 LB").in(pound) == Approx(1));
    CHECK(parse<Volume>("2 pt").in(imperial_pint) == Approx(2));
    CHECK(parse<Volume>("2pt").in(imperial_pint) == Approx(2));
    CHECK(parse<Volume>("½ pint").in(imperial_pint) == Approx(0.5));
    CHECK(parse<Volume>("2½ pints").in(imperial_pint) == Approx(2.5));
    CHECK(parse<Volume>("1/2 pt").in(imperial_pint) == Approx(0.5));
    CHECK(parse<Volume>("1 1/2 litre").in(litre) == Approx(1.5));
    CHECK(parse<Volume>("20 fl oz").in(imperial_pint) == Approx(1));
    CHECK(parse<Volume>("16 US fl oz").in(us_pint) == Approx(1));
    CHECK(parse<Volume>("3l").in(litre) == Approx(3));
    CHECK(parse<Length>("55\u00a0mm").in(millimetre) == Approx(55));
    CHECK(parse<Time>("20 minutes").in(minute) == Approx(20));
    CHECK(parse<Time>("9 month").in(month) == Approx(9));
    CHECK(parse<Density>("420 g/l").in(gram_per_litre) == Approx(420));
    CHECK(parse<Density>("1.31 g/ml").in(gram_per_millilitre) == Approx(1.31));
    CHECK(parse<Speed>("2cm/s").in(centimetre_per_second) == Approx(2));
    CHECK(parse<Diffusivity>("2e-10 m2/s").si() == Approx(2e-10));
    CHECK(parse<Diffusivity>("1 mm2/s").si() == Approx(1e-6));
    CHECK(parse<MolarEnergy>("35 kJ/mol").in(kilojoule_per_mole) == Approx(35));
    CHECK(parse<Pressure>("1013.25 mbar").in(kilopascal) == Approx(101.325));
    CHECK(parse<Ratio>("15 %") == Approx(0.15));
    CHECK(parse<Ratio>("15%") == Approx(0.15));
    CHECK(parse<Ratio>("0.65 g/g") == Approx(0.65));
    for (const char* typed : {"12 degC", "12degC", "12 °C", "12°C", "12 C", "12C"})
        CHECK(parse<Temperature>(typed).in_celsius() == Approx(12));
    CHECK(parse<Temperature>("-2C").in_celsius() == Approx(-2));
    CHECK(parse<Temperature>("50 F").in_celsius() == Approx(10));
    CHECK(parse<Temperature>("300 K").in_kelvin() == Approx(300));
}

TEST_CASE("a quantity may be written in parts, the larger unit first") {
    CHECK(parse<Mass>("1 lb 4 oz").in(ounce) == Approx(20));
    CHECK(parse<Time>("2 h 30 min").in(minute) == Approx(150));
    CHECK(parse<Time>("1 d 2 h 30min 15s").in(second) == Approx(95415));
    CHECK(parse<Length>("5 ft 6½ in").in(inch) == Approx(66.5));
    CHECK(parse<Volume>("1 gal 2 pt").in(imperial_pint) == Approx(10));
}

TEST_CASE("a minus in front of parts holds for all of them") {
    CHECK(parse<Mass>("-1 lb 4 oz").in(ounce) == Approx(-20));
    CHECK(parse<Mass>("-0 lb 4 oz").in(ounce) == Approx(-4));
}

namespace {

struct BadMass {
    const char* text;
    const char* code;
    const char* message;
    const char* hint;
};
const char* const mass_units = "a mass is written in g, kg, oz or lb";

}  // namespace

TEST_CASE("what is no mass is refused, saying what is wrong and what would do") {
    const BadMass row = GENERATE(values<BadMass>({
        {"400", "no-unit", "'400' has no unit", mass_units},
        {"½", "no-unit", "'½' has no unit", mass_units},
        {"1 lb 4", "no-unit", "'4' has no unit", mass_units},
        {"400 ml", "wrong-dimension", "'400 ml' is a volume, but a mass is needed here", mass_units},
        {"15 %", "wrong-dimension", "'15 %' is a ratio, but a mass is needed here", mass_units},
        {"1 lb 4 mm", "wrong-dimension", "'4 mm' is a length, but a mass is needed here", mass_units},
        {"400 grm", "unknown-unit", "'400 grm': unknown unit 'grm'", "did you mean 'g'?"},
        {"5 kgz", "unknown-unit", "'5 kgz': unknown unit 'kgz'", "did you mean 'kg'?"},
        {"5 bags", "unknown-unit", "'5 bags': unknown unit 'bags'", mass_units},
        {"5 lb, 4 oz", "unknown-unit", "'5 lb, 4 oz': unknown unit 'lb,'", "did you mean 'lb'?"},
        {"1,5 kg", "not-a-number", "'1,5 kg' has a comma in its number", "write 1.5"},
        {"1,500 kg", "not-a-number", "'1,500 kg' has a comma in its number", "write 1500 or 1.500"},
        {"", "not-a-number", "nothing is written", "as in 400 g"},
        {"g", "not-a-number", "'g' does not start with a number", "as in 400 g"},
        {"nan kg", "not-a-number", "'nan kg' does not start with a number", "as in 400 g"},
        {"inf kg", "not-a-number", "'inf kg' does not start with a number", "as in 400 g"},
        {"0x10 g", "not-a-number", "'0x10 g': 'x10 g' is left over", "write a mass as in 400 g"},
        {"1/0 kg", "not-a-number", "'1/0 kg' divides by nothing", "write it as in 1/2 or 0.5"},
        {"12 3 kg", "not-a-number", "'12 3 kg': '3 kg' is left over", "write a mass as in 400 g"},
        {"5 kg or so", "not-a-number", "'5 kg or so': 'or so' is left over", "write a mass as in 400 g"},
        {"5 kg -", "not-a-number", "'5 kg -': '-' is left over", "write a mass as in 400 g"},
        {"4 oz 1 lb", "out-of-order", "'4 oz 1 lb' has its parts out of order",
         "write the larger unit first, each once, as in 1 lb 4 oz"},
        {"1 lb 1 lb", "out-of-order", "'1 lb 1 lb' has its parts out of order",
         "write the larger unit first, each once, as in 1 lb 4 oz"},
        {"1 lb -4 oz", "out-of-order", "'1 lb -4 oz' has a sign inside", "a sign belongs in front of the whole"},
        {"1e301 kg", "too-large", "'1e301 kg' is larger than any number used here",
         "check its digits; an amount reads like 500 g or 1.5 l"},
    }));
    CAPTURE(row.text);
    const auto fault = fault_of([&] { parse<Mass>(row.text); });
    CHECK(fault.code == row.code);
    CHECK(fault.message == row.message);
    CHECK(fault.hint == row.hint);
}

TEST_CASE("what cannot be written in parts is not read from parts") {
    CHECK(fault_of([] { parse<Temperature>("12 degC 3 degC"); }).code == "not-a-number");
    CHECK(fault_of([] { parse<Speed>("1 m/s 2 cm/s"); }).code == "not-a-number");
    CHECK(fault_of([] { parse<Ratio>("1 g/g 2 %"); }).code == "not-a-number");
}

TEST_CASE("a ratio needs its unit, so that 15 is not taken for 15 %") {
    CHECK(fault_of([] { parse<Ratio>("15"); }).code == "no-unit");
    CHECK(fault_of([] { parse<Ratio>("0.8 ml/g"); }).code == "unknown-unit");
    CHECK(fault_of([] { parse<Ratio>("1:5"); }).code == "not-a-number");
}

TEST_CASE("below zero is read, since only the caller knows the range") {
    CHECK(parse<Mass>("-5 g").in(gram) == Approx(-5));
    CHECK(parse<Temperature>("-300 degC").in_kelvin() < 0);
}

TEST_CASE("a quantity that is written reads back as the same") {
    check_there_and_back(gram, "g");
    check_there_and_back(pound, "lb");
    check_there_and_back(millilitre, "ml");
    check_there_and_back(millimetre, "mm");
    check_there_and_back(second, "s");
    check_there_and_back(gram_per_litre, "g/l");
    check_there_and_back(centimetre_per_second, "cm/s");
    check_there_and_back(square_metre_per_second, "m2/s");
    check_there_and_back(kilojoule_per_mole, "kJ/mol");
    check_there_and_back(kilopascal, "kPa");
    check_there_and_back(percent, "%");
}

TEST_CASE("a temperature that is written reads back as the same") {
    CHECK(rc::check([] {
        const double kelvins = *rc::gen::inRange(1000000, 1000000000) * 1e-6;
        const auto text = exact_text(Temperature::from_kelvin(kelvins));
        RC_ASSERT(near_to(parse<Temperature>(text).in_kelvin(), kelvins));
    }));
}

TEST_CASE("what was entered in round numbers is written in them") {
    CHECK(exact_text(parse<Mass>("400 g"), gram, "g") == "400 g");
    CHECK(exact_text(parse<Volume>("2 pt"), millilitre, "ml") == "1136.5225 ml");
    CHECK(exact_text(parse<Ratio>("6.5 %"), percent, "%") == "6.5 %");
    CHECK(exact_text(parse<Temperature>("0.01 degC")) == "0.01 degC");
    CHECK(exact_text(parse<Temperature>("12 degC")) == "12 degC");
    CHECK(exact_text(0.8 * millilitre_per_gram, millilitre_per_gram, "ml/g") == "0.8 ml/g");
    CHECK(exact_text(Mass(), gram, "g") == "0 g");
}

TEST_CASE("any text is read as a mass or refused, and never more than that") {
    CHECK(rc::check([](const std::string& text) {
        try {
            RC_ASSERT(is_finite(parse<Mass>(text)));
        } catch (const InputError& error) {
            RC_ASSERT(!error.faults().front().message.empty());
        }
    }));
}
