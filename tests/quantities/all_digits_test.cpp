#include "quantities/all_digits.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <cstdint>
#include <cstring>

#include "quantities/quantity_text.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

/// Of any size that a quantity of bait has, with any digits.
double any_si() {
    const auto bits = *rc::gen::arbitrary<std::uint32_t>(), more = *rc::gen::arbitrary<std::uint32_t>();
    const double digits = 1 + (static_cast<double>(bits) + static_cast<double>(more) / 4294967296.0) / 4294967296.0;
    return std::ldexp(digits, *rc::gen::inRange(-40, 40));
}

template <class Q, class D>
void comes_back(Unit<D> unit, const char* symbol) {
    const AllDigitsHere exactly;
    const Q quantity = Q::from_si(any_si());
    RC_ASSERT(parse<Q>(exact_text(quantity, unit, symbol)).si() == quantity.si());
}

}  // namespace

TEST_CASE("with all digits any quantity is written and read back to the last bit") {
    CHECK(rc::check("mass", [] { comes_back<Mass>(gram, "g"); }));
    CHECK(rc::check("volume", [] { comes_back<Volume>(millilitre, "ml"); }));
    CHECK(rc::check("length", [] { comes_back<Length>(millimetre, "mm"); }));
    CHECK(rc::check("minutes", [] { comes_back<Time>(minute, "min"); }));
    CHECK(rc::check("months", [] { comes_back<Time>(month, "month"); }));
    CHECK(rc::check("density", [] { comes_back<Density>(gram_per_millilitre, "g/ml"); }));
    CHECK(rc::check("speed", [] { comes_back<Speed>(centimetre_per_second, "cm/s"); }));
    CHECK(rc::check("energy", [] { comes_back<MolarEnergy>(kilojoule_per_mole, "kJ/mol"); }));
    CHECK(rc::check("pressure", [] { comes_back<Pressure>(kilopascal, "kPa"); }));
    CHECK(rc::check("share", [] { comes_back<Ratio>(percent, "%"); }));
    CHECK(rc::check("warmth", [] {
        const AllDigitsHere exactly;
        const double kelvins = 250 + std::fmod(any_si(), 150);
        RC_ASSERT(parse<Temperature>(exact_text(Temperature::from_kelvin(kelvins))).in_kelvin() == kelvins);
    }));
}

TEST_CASE("all digits are written only where the short text would not come back the same") {
    const AllDigitsHere exactly;
    CHECK(exact_text(0.5 * kilogram, gram, "g") == "500 g");
    CHECK(exact_text(Temperature::from_celsius(12.5)) == "12.5 degC");
    CHECK(exact_text(Ratio(1.0 / 3), percent, "%") != "33.3333333333 %");
}

TEST_CASE("what is written is short again once all digits are no longer wanted") {
    {
        const AllDigitsHere exactly;
        const AllDigitsHere within;
    }
    CHECK_FALSE(all_digits_wanted());
    CHECK(exact_text(Ratio(1.0 / 3), one, "g/g") == "0.3333333333333 g/g");
}
