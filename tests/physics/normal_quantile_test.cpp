#include "physics/normal_quantile.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <vector>

#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

// Source: tests/reference/normal_quantile.csv (SciPy's ndtri), row by row.
TEST_CASE("the normal quantile agrees with SciPy from the middle to the far tails") {
    for (const auto& row : reference::rows_in("normal_quantile.csv")) {
        CAPTURE(row.at("probability"), row.at("source"));
        const double expected = std::stod(row.at("quantile"));
        CHECK(normal_quantile(std::stod(row.at("probability"))) == Approx(expected).epsilon(2e-15).margin(1e-17));
    }
}

TEST_CASE("the normal quantile is endless at the ends and undefined outside them") {
    CHECK(normal_quantile(0.0) == -std::numeric_limits<double>::infinity());
    CHECK(normal_quantile(1.0) == std::numeric_limits<double>::infinity());
    CHECK(std::isnan(normal_quantile(-0.1)));
    CHECK(std::isnan(normal_quantile(1.1)));
    CHECK(std::isnan(normal_quantile(std::numeric_limits<double>::quiet_NaN())));
}

TEST_CASE("the normal quantile is odd about one half and undone by the distribution function") {
    CHECK(rc::check([] {
        const double p = *rc::gen::inRange(1, 1 << 20) * 0x1p-20;
        const double z = normal_quantile(p);
        RC_ASSERT(std::abs(normal_quantile(1 - p) + z) < 1e-9 * (1 + std::abs(z)));
        RC_ASSERT(std::abs(0.5 * std::erfc(-z / std::sqrt(2.0)) - p) < 1e-14);
    }));
}

TEST_CASE("a row of normal quantiles is each of them, the ends and what lies outside among them") {
    CHECK(rc::check([] {
        std::vector<double> row;
        for (const int one : *rc::gen::container<std::vector<int>>(rc::gen::inRange(-2, (1 << 12) + 3)))
            row.push_back(one * 0x1p-12);
        const std::vector<double> of = row;
        normal_quantiles(row);
        for (std::size_t i = 0; i < of.size(); ++i) {
            const double alone = normal_quantile(of[i]);
            RC_ASSERT(row[i] == alone || (std::isnan(row[i]) && std::isnan(alone)));
        }
    }));
}

// Source: tests/reference/monte_carlo.csv, row 04: log-normal with mean 100 and relative deviation 0.2.
TEST_CASE("the spread of a log-normal gives its published median and limits") {
    for (const auto& row : reference::rows_in("monte_carlo.csv")) {
        if (row.at("id") != "MONTE_CARLO-04") continue;
        const auto expected = numbers_in(row.at("expected"));
        const double sigma = log_normal_sigma(0.2);
        const double median = 100 * std::exp(-0.5 * sigma * sigma);
        CHECK(median == Approx(expected.at(0)).epsilon(0).margin(1e-4));
        CHECK(median * std::exp(sigma * normal_quantile(0.025)) == Approx(expected.at(1)).epsilon(0).margin(1e-4));
        CHECK(median * std::exp(sigma * normal_quantile(0.975)) == Approx(expected.at(2)).epsilon(0).margin(1e-4));
        return;
    }
    FAIL("row MONTE_CARLO-04 is missing");
}

// Source: tests/reference/monte_carlo.csv, row 02: the sum of four standard normals has deviation 2.
TEST_CASE("the limit of a sum of four normals is twice that of one") {
    for (const auto& row : reference::rows_in("monte_carlo.csv")) {
        if (row.at("id") != "MONTE_CARLO-02") continue;
        CHECK(2 * normal_quantile(0.975) == Approx(std::stod(row.at("expected"))).epsilon(0).margin(1e-6));
        return;
    }
    FAIL("row MONTE_CARLO-02 is missing");
}
