#include "quantities/amount_range.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "quantities/fault_of.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

template <class Q>
void check_ends(const char* least_text) {
    const AmountRange<Q>& range = range_of<Q>();
    CHECK(in_range(range.least) == range.least);
    CHECK(in_range(range.most) == range.most);
    for (const Q beyond : {0.5 * range.least, 2 * range.most, Q{}, -range.least,
                           Q::from_si(std::numeric_limits<double>::infinity()), Q::from_si(std::nan(""))}) {
        const Fault fault = fault_of([&] { in_range(beyond); });
        CHECK(fault.code == "out-of-range");
        CHECK(fault.hint.find(least_text) != std::string::npos);
        CHECK(fault.hint.find(range.example) != std::string::npos);
    }
}

}  // namespace

TEST_CASE("an amount lies in the range of its measure, its ends included") {
    check_ends<Mass>("from 1 mg to 10000 kg");
    check_ends<Volume>("from 0.001 ml to 10000 l");
    check_ends<Length>("from 0.01 mm to 1000 m");
    check_ends<Time>("from 0.1 s to 100 years");
    check_ends<Pressure>("from 0.1 kPa to 1000 kPa");
}

TEST_CASE("nothing is an amount of water yet to be poured, and less than nothing is not") {
    CHECK(nothing_or_in_range(Volume{}) == Volume{});
    CHECK(nothing_or_in_range(Time{}) == Time{});
    CHECK(fault_of([] { nothing_or_in_range(-1.0 * litre); }).code == "out-of-range");
    CHECK(fault_of([] { nothing_or_in_range(1e300 * hour); }).code == "out-of-range");
}

TEST_CASE("a price is from nothing to a million") {
    CHECK(in_range(parse_money("£0")).minor() == 0);
    CHECK(in_range(parse_money("£1000000")).minor() == 100'000'000);
    CHECK(fault_of([] { in_range(parse_money("£1000000.01")); }).hint == "it can be from £0.00 to £1000000.00");
    CHECK(fault_of([] { in_range(parse_money("£92233720368547758.07")); }).code == "out-of-range");
    CHECK(fault_of([] { in_range(parse_money("-1p")); }).code == "out-of-range");
}
