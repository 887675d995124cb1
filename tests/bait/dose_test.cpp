#include "bait/dose.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "quantities/fault_of.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

double si_of(const DoseRate& rate) {
    return std::visit([](auto amount) { return amount.si(); }, rate.each);
}

std::string code_of(std::string_view text) {
    return fault_of([&] { parse_dose_rate(text); }).code;
}

}  // namespace

TEST_CASE("a dose is read by each of its bases") {
    const DoseRate dry = parse_dose_rate("25 ml per kg dry");
    CHECK(dry.basis == DoseBasis::per_kg_dry);
    CHECK(std::get<Volume>(dry.each).in(millilitre) == Approx(25));
    const DoseRate wet = parse_dose_rate("5 g per kg wet");
    CHECK(wet.basis == DoseBasis::per_kg_wet);
    CHECK(std::get<Mass>(wet.each).in(gram) == Approx(5));
    CHECK(parse_dose_rate("10 ml per l water").basis == DoseBasis::per_litre_water);
    CHECK(parse_dose_rate("15 ml per pt pellets").basis == DoseBasis::per_pint_pellets);
    const DoseRate share = parse_dose_rate("2 %");
    CHECK(share.basis == DoseBasis::share_of_dry);
    CHECK(std::get<Mass>(share.each).in(gram) == Approx(20));
}

TEST_CASE("a dose in ounces and pints is the same dose") {
    CHECK(si_of(parse_dose_rate("1 oz per kg dry")) == Approx(0.028349523125));
    CHECK(si_of(parse_dose_rate("0.5 pt per kg dry")) == Approx(0.000284130625));
}

TEST_CASE("what is no dose is refused, and says why") {
    CHECK(code_of("25 ml") == "no-basis");
    CHECK(code_of("25 ml per bucket") == "unknown-basis");
    CHECK(code_of("0 ml per kg dry") == "out-of-range");
    CHECK(code_of("-5 g per kg dry") == "out-of-range");
    CHECK(code_of("-2 %") == "out-of-range");
    CHECK(code_of("25 mm per kg dry") == "wrong-dimension");
    CHECK(code_of("25 furlong per kg dry") == "unknown-unit");
    CHECK_FALSE(fault_of([] { parse_dose_rate("25 ml per bucket"); }).hint.empty());
}

TEST_CASE("a dose that is written reads back as the same dose") {
    CHECK(rc::check([] {
        const auto basis = static_cast<DoseBasis>(*rc::gen::inRange(0, 5));
        const double amount = *rc::gen::inRange(1, 100000) / 100.0;
        DoseRate rate{basis, amount * gram};
        if (basis != DoseBasis::share_of_dry && *rc::gen::arbitrary<bool>()) rate.each = amount * millilitre;
        const DoseRate back = parse_dose_rate(dose_rate_text(rate));
        RC_ASSERT(back.basis == rate.basis);
        RC_ASSERT(back.each.index() == rate.each.index());
        RC_ASSERT(std::abs(si_of(back) / si_of(rate) - 1) < 1e-12);
    }));
}

TEST_CASE("a dose is written as a person would write it") {
    for (const char* text : {"25 ml per kg dry", "5 g per kg wet", "10 ml per l water", "15 ml per pt pellets", "2 %",
                             "2.5 g per kg dry", "0.1 ml per l water"})
        CHECK(dose_rate_text(parse_dose_rate(text)) == text);
}

TEST_CASE("no tail of rounded digits is written after a whole dose") {
    for (int amount = 1; amount <= 100; ++amount) {
        const std::string whole = std::to_string(amount);
        for (const std::string& text : {whole + " ml per kg dry", whole + " g per kg wet", whole + " %"})
            CHECK(dose_rate_text(parse_dose_rate(text)) == text);
    }
}

TEST_CASE("case and blanks do not matter in a dose") {
    for (const char* text : {"25 ml PER KG DRY", " 25 ml  per  kg  dry ", "25ml per kg dry", "25 ml\tper kg dry"}) {
        CAPTURE(text);
        CHECK(code_of(text).empty());
    }
}
