#include "physics/small_exponentials.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <vector>

using namespace baitwright;

// Source: the C++ library's own exp.
TEST_CASE("a row of small exponentials is that of the library within 2e-9") {
    std::vector<double> scale, x;
    for (int i = -100; i <= 100; ++i) {
        scale.push_back(0.25);
        x.push_back(0.04 * i);
    }
    std::vector<double> out(x.size());
    exponentials(scale, x, out);
    for (std::size_t k = 0; k < x.size(); ++k) CHECK(out[k] == Approx(std::exp(0.25 * x[k])).epsilon(2e-9));
}

TEST_CASE("a row with a large argument is exact throughout") {
    const std::vector<double> scale{0.5, 0.5, 3}, x{0.1, -2, 4};
    std::vector<double> out(3);
    exponentials(scale, x, out);
    for (std::size_t k = 0; k < 3; ++k) CHECK(out[k] == std::exp(scale[k] * x[k]));
}

TEST_CASE("the quick exponential is within 8e-9 of the library's from -700 to 700, and beyond stays at its end") {
    for (int i = -70000; i <= 70000; ++i) {
        const double x = 0.01 * i + 1e-3 / 3;
        if (x <= 700) CHECK(quick_exponential(x) == Approx(std::exp(x)).epsilon(8e-9));
    }
    CHECK(quick_exponential(0) == 1);
    CHECK(quick_exponential(-1e300) == quick_exponential(-700));
    CHECK(quick_exponential(-std::numeric_limits<double>::infinity()) == quick_exponential(-700));
    CHECK(quick_exponential(-700) > 0);
}

TEST_CASE("the quick logarithm is within 1e-9 of the library's over all normal numbers") {
    for (int i = -70800; i <= 70900; ++i) {
        const double x = std::exp(0.01 * i);
        CHECK(quick_logarithm(x) == Approx(std::log(x)).margin(1e-9).epsilon(1e-13));
    }
    CHECK(quick_logarithm(1) == 0);
    for (const double x : {std::numeric_limits<double>::min(), std::numeric_limits<double>::max()})
        CHECK(quick_logarithm(x) == Approx(std::log(x)).epsilon(1e-13));
}
