#include "physics/solutions.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "quantities/fault.h"
#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

constexpr auto kilogram_per_cubic_metre = kilogram / (metre * metre * metre);

double fraction_of(const reference::Row& row) {
    return reference::numbers_in(row.at("inputs")).front() / 100;
}

bool holds(const reference::Row& row, const std::string& text) {
    return row.at("inputs").find(text) != std::string::npos;
}

}  // namespace

// Source: Rogers & Pitzer 1982 (row's source column), which the table in the code was not taken from.
TEST_CASE("brine weighs what Rogers and Pitzer measured") {
    int tested = 0;
    for (const reference::Row& row : reference::rows_in("nacl_density.csv")) {
        if (!holds(row, "molality")) continue;
        CAPTURE(row.at("id"), row.at("source"));
        const double salt = reference::numbers_in(row.at("inputs")).front() * 58.443 / 1000;  // g per g of water
        const double specific = 1000 / solution_density(Solute::salt, salt / (1 + salt)).in(kilogram_per_cubic_metre);
        CHECK(specific == Approx(std::stod(row.at("expected"))).epsilon(0).margin(5e-4));
        ++tested;
    }
    CHECK(tested == 4);
}

// Source: the tables named in the rows; the code holds them, so this checks the copying.
TEST_CASE("the tables of solutions are copied right") {
    for (const reference::Row& row : reference::rows_in("nacl_density.csv")) {
        if (!holds(row, "20 C") || holds(row, "molality")) continue;
        CAPTURE(row.at("id"));
        CHECK(solution_density(Solute::salt, fraction_of(row)).in(kilogram_per_cubic_metre) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(0.5));
    }
    for (const reference::Row& row : reference::rows_in("sucrose_density.csv")) {
        CAPTURE(row.at("id"));
        CHECK(solution_density(Solute::sucrose, fraction_of(row)).in(gram_per_millilitre) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(3e-4));
    }
    int tenths = 0;
    for (const reference::Row& row : reference::rows_in("glycerol_density.csv")) {
        if (!holds(row, "SG")) continue;
        CAPTURE(row.at("id"));
        ++tenths;
        CHECK(solution_density(Solute::glycerol, fraction_of(row)).in(gram_per_millilitre) / 0.9982 ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(2e-4));
    }
    CHECK(tenths == 10);
}

// Source: tests/reference/sucrose_solubility.csv: two tables that were read, the older one higher by up to 0.4 %.
TEST_CASE("warm water dissolves more sugar than cold, by the tables") {
    int tested = 0;
    for (const reference::Row& row : reference::rows_in("sucrose_solubility.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const double celsius = reference::numbers_in(row.at("inputs")).front();
        CHECK(100 * soluble_fraction(Solute::sucrose, Temperature::from_celsius(celsius)) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(std::stod(row.at("tolerance"))));
        ++tested;
    }
    CHECK(tested == 9);
    for (double celsius = 0; celsius <= 40; celsius += 5) {
        const Temperature water = Temperature::from_celsius(celsius);
        CHECK(soluble_fraction(Solute::sucrose, water + 1.0 * kelvin) > soluble_fraction(Solute::sucrose, water));
        CHECK(soluble_fraction(Solute::sucrose, water) < highest_fraction(Solute::sucrose));
        CHECK(soluble_fraction(Solute::glycerol, water) == 1.0);
    }
}

// Source: the rows of 15 degC in the same table; the code knows 20 degC only.
TEST_CASE("colder brine is heavier, by less than half a percent at 15 degC") {
    int tested = 0;
    for (const reference::Row& row : reference::rows_in("nacl_density.csv")) {
        if (!holds(row, "15 C")) continue;
        CAPTURE(row.at("id"), row.at("source"));
        const double warm = solution_density(Solute::salt, fraction_of(row)).in(kilogram_per_cubic_metre);
        CHECK(std::stod(row.at("expected")) > warm);
        CHECK(std::stod(row.at("expected")) == Approx(warm).epsilon(0.005));
        ++tested;
    }
    CHECK(tested == 3);
}

// Source: row GLYCEROL_DENSITY-11: adding the volumes of glycerol and water misses the table by 1 %.
TEST_CASE("glycerol and water shrink when mixed, and the table knows it") {
    const double added = 1 / (0.5 / 1.2613 + 0.5 / 0.9982);
    const double table = solution_density(Solute::glycerol, 0.5).in(gram_per_millilitre);
    CHECK(100 * (added / table - 1) == Approx(-1.063).epsilon(0).margin(0.03));
}

// The rows of Norrish's law have the same equation on both sides: a check of coding; that of salt is from elsewhere.
TEST_CASE("water activity follows Norrish and the salt table") {
    for (const reference::Row& row : reference::rows_in("water_activity.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const double expected = std::stod(row.at("expected"));
        if (holds(row, "saturated NaCl"))
            CHECK(water_activity(Solute::salt, 0.2645 > highest_fraction(Solute::salt) ? 0.264 : 0.2645) ==
                  Approx(expected).epsilon(0).margin(0.002));
        else
            CHECK(water_activity(holds(row, "glycerol") ? Solute::glycerol : Solute::sucrose, fraction_of(row)) ==
                  Approx(expected).epsilon(0).margin(1e-4));
    }
}

// Source: row DILUTION-01, a worked example: 100 g of 62 Bx and 540 g of water make 9.69 % by mass.
TEST_CASE("a syrup let down with water has the strength of the worked example") {
    const reference::Row row = reference::rows_in("dilution.csv").front();
    CHECK(100 * mass_fraction(62.0 * gram, (38.0 + 540.0) * gram) ==
          Approx(std::stod(row.at("expected"))).epsilon(0).margin(1e-4));
}

TEST_CASE("more than water dissolves is refused, pure water is water") {
    CHECK_THROWS_AS(solution_density(Solute::salt, 0.3), InputError);
    CHECK_THROWS_AS(water_activity(Solute::sucrose, 0.75), InputError);
    for (const Solute solute : {Solute::salt, Solute::glycerol, Solute::sucrose}) {
        CHECK(water_activity(solute, 0.0) == Approx(1.0));
        CHECK(solution_density(solute, 0.0).in(gram_per_millilitre) == Approx(0.9982));
        CHECK(find_solute(name_of(solute)) == solute);
        for (double f = 0.01; f <= highest_fraction(solute); f += 0.01) {
            CHECK(water_activity(solute, f) < water_activity(solute, f - 0.01));
            CHECK(solution_density(solute, f) > solution_density(solute, f - 0.01));
        }
    }
    CHECK_FALSE(find_solute("honey").has_value());
}
