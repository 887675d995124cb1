#include "physics/moisture.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

namespace {

struct Lot {
    double kilograms, moisture;
};

/// Moisture of lots tipped together, wet basis, by the dry matter and the water of each.
double blend_moisture(const std::vector<Lot>& lots) {
    double dry_matter = 0, water = 0;
    for (const Lot& lot : lots) {
        const double dry = lot.kilograms / (1 + dry_basis(lot.moisture));
        dry_matter += dry;
        water += dry * dry_basis(lot.moisture);
    }
    return wet_basis(water / dry_matter);
}

const std::vector<Lot> published_blend{{1.2, 0.0651}, {0.5, 0.1026}, {0.3, 0.0989}};

rc::Gen<double> moistures() {
    return rc::gen::map(rc::gen::inRange(0, 900), [](int thousandths) { return thousandths / 1000.0; });
}

}  // namespace

// Source: tests/reference/moisture_basis.csv, row by row; the same equation on both sides: a check of coding.
TEST_CASE("moisture of the whole turns into moisture per dry matter as the definition has it") {
    for (const auto& row : reference::rows_in("moisture_basis.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const double wet = numbers_in(row.at("inputs")).front() / 100;
        CHECK(100 * dry_basis(wet) == Approx(std::stod(row.at("expected"))).epsilon(0).margin(1e-4));
    }
}

// Source: tests/reference/moisture_temper.csv, rows 01 to 04: water that brings one lot to a moisture.
TEST_CASE("the water to temper a lot agrees with the mill manual and the mass balance") {
    int tested = 0;
    for (const auto& row : reference::rows_in("moisture_temper.csv")) {
        if (row.at("id") > "MOISTURE_TEMPER-04") continue;
        CAPTURE(row.at("id"), row.at("source"));
        const auto in = numbers_in(row.at("inputs"));
        const Mass water = tempering_water(in.at(0) * kilogram, in.at(1) / 100, in.at(2) / 100);
        CHECK(water.in(kilogram) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(std::stod(row.at("tolerance"))));
        ++tested;
    }
    CHECK(tested == 3);
}

// Source: tests/reference/moisture_temper.csv, rows 05 to 08: three lots blended, then tempered.
TEST_CASE("a blend of lots has the moisture and takes the water of the worked example") {
    int tested = 0;
    for (const auto& row : reference::rows_in("moisture_temper.csv")) {
        if (row.at("id") < "MOISTURE_TEMPER-05") continue;
        CAPTURE(row.at("id"), row.at("source"));
        const double moisture = blend_moisture(published_blend);
        const double ours =
            row.at("id") == "MOISTURE_TEMPER-05"
                ? 100 * moisture
                : tempering_water(2.0 * kilogram, moisture, numbers_in(row.at("inputs")).at(1) / 100).in(kilogram);
        CHECK(ours == Approx(std::stod(row.at("expected"))).epsilon(0).margin(std::stod(row.at("tolerance"))));
        ++tested;
    }
    CHECK(tested == 4);
}

TEST_CASE("wet basis and dry basis lead back to each other") {
    CHECK(rc::check([] {
        const double wet = *moistures();
        RC_ASSERT(std::abs(wet_basis(dry_basis(wet)) - wet) < 1e-14);
    }));
}

TEST_CASE("tempered stuff weighs its moisture") {
    CHECK(rc::check([] {
        const double from = *moistures(), to = *moistures();
        const Mass lot = 2.0 * kilogram;
        const Mass water = tempering_water(lot, from, to);
        const double weighed = (from * lot + water) / (lot + water);
        RC_ASSERT(std::abs(weighed - to) < 1e-13);
        RC_ASSERT((water > Mass{}) == (to > from));
    }));
}

// By hand: 1 g at 10 % that takes 0.5 g holds 0.6 g of water on 0.9 g of dry matter. At 20 % a gram has 0.8 g of dry
// matter, which wants 0.6 x 0.8/0.9 = 0.5333 g; 0.2 g is there already, so 0.3333 g.
TEST_CASE("a damper bag takes less water to the same mark") {
    CHECK(added_water_at_moisture(0.5, 0.10, 0.20) == Approx(1.0 / 3).epsilon(1e-14));
}

TEST_CASE("a mark moved to another moisture holds the same water per dry matter, and moves back") {
    CHECK(rc::check([] {
        const double mark = *rc::gen::inRange(0, 2000) / 1000.0, stated = *moistures(), actual = *moistures();
        const double moved = added_water_at_moisture(mark, stated, actual);
        RC_ASSERT(std::abs((moved + actual) / (1 - actual) - (mark + stated) / (1 - stated)) < 1e-11);
        RC_ASSERT(std::abs(added_water_at_moisture(moved, actual, stated) - mark) < 1e-12);
        RC_ASSERT(std::abs(added_water_at_moisture(mark, stated, stated) - mark) < 1e-12);
    }));
}
