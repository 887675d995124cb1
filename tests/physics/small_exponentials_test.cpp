#include "physics/small_exponentials.h"

#include <catch2/catch.hpp>
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
