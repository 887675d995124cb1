#include "physics/food_density.h"

#include <catch2/catch.hpp>
#include <map>

#include "quantities/fault.h"
#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

namespace {

const Temperature bench = Temperature::from_celsius(20);

double grams_per_millilitre(const FoodShares& shares) {
    return pore_free_density(shares, bench).in(gram_per_millilitre);
}

}  // namespace

// Source: tests/reference/food_density.csv: oil and a paste as measured, crystal sugar, water.
TEST_CASE("oil, paste, sugar and water are as dense as measured, within 1 %") {
    int tested = 0;
    for (const auto& row : reference::rows_in("food_density.csv")) {
        if (row.at("topic") != "FOOD_DENSITY") continue;
        CAPTURE(row.at("id"), row.at("source"));
        const auto in = numbers_in(row.at("inputs"));
        CHECK(grams_per_millilitre({in.at(0), in.at(1), in.at(2), in.at(3), in.at(4), in.at(5)}) ==
              Approx(std::stod(row.at("expected"))).epsilon(0.01));
        ++tested;
    }
    CHECK(tested == 4);
}

// Source: tests/reference/sucrose_density.csv, the measured table of syrups at 20 degC.
TEST_CASE("a syrup is as dense as measured, within 1 %") {
    for (const auto& row : reference::rows_in("sucrose_density.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const double sugar = numbers_in(row.at("inputs")).front() / 100;
        CHECK(grams_per_millilitre({1 - sugar, 0.0, 0.0, sugar, 0.0, 0.0}) ==
              Approx(std::stod(row.at("expected"))).epsilon(0.01));
    }
}

// Source: tests/reference/food_density.csv, rows 04 to 08: the same equation on both sides.
TEST_CASE("the coefficients of each part of a food are copied right: a check of coding") {
    const std::map<std::string, FoodShares> alone{{"protein", {0.0, 1.0, 0.0, 0.0, 0.0, 0.0}},
                                                  {"fat", {0.0, 0.0, 1.0, 0.0, 0.0, 0.0}},
                                                  {"carbohydrate", {0.0, 0.0, 0.0, 1.0, 0.0, 0.0}},
                                                  {"fibre", {0.0, 0.0, 0.0, 0.0, 1.0, 0.0}},
                                                  {"ash", {0.0, 0.0, 0.0, 0.0, 0.0, 1.0}}};
    int tested = 0;
    for (const auto& row : reference::rows_in("food_density.csv")) {
        if (row.at("topic") != "FOOD_DENSITY_CODING") continue;
        const std::string inputs = row.at("inputs"), part = inputs.substr(0, inputs.find(' '));
        CAPTURE(row.at("id"));
        CHECK(pore_free_density(alone.at(part), Temperature::from_celsius(numbers_in(inputs).front())).si() ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(1e-3));
        ++tested;
    }
    CHECK(tested == 5);
}

// By hand: the volumes of 0.5 g of water and 0.5 g of fat at 20 degC, 0.5/0.995740 + 0.5/0.917239 = 1.047254 ml.
TEST_CASE("the parts of a food fill the sum of their volumes, whatever their shares sum to") {
    CHECK(grams_per_millilitre({0.5, 0.0, 0.5, 0.0, 0.0, 0.0}) == Approx(1 / 1.047254).epsilon(1e-6));
    CHECK(grams_per_millilitre({5.0, 0.0, 5.0, 0.0, 0.0, 0.0}) == Approx(1 / 1.047254).epsilon(1e-6));
}

TEST_CASE("a food made of nothing, or of less than nothing, has no density") {
    CHECK_THROWS_AS(pore_free_density({}, bench), InputError);
    CHECK_THROWS_AS(pore_free_density({1.0, -0.1, 0.0, 0.0, 0.0, 0.0}, bench), InputError);
}
