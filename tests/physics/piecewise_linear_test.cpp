#include "physics/piecewise_linear.h"

#include <array>
#include <catch2/catch.hpp>

using namespace baitwright;

TEST_CASE("a line through knots is met at the knots, linear between and flat outside") {
    constexpr std::array<Knot, 3> knots{{{1, 10}, {2, 30}, {4, 0}}};
    CHECK(piecewise_linear(knots, 1) == 10);
    CHECK(piecewise_linear(knots, 2) == 30);
    CHECK(piecewise_linear(knots, 4) == 0);
    CHECK(piecewise_linear(knots, 1.5) == 20);
    CHECK(piecewise_linear(knots, 3) == 15);
    CHECK(piecewise_linear(knots, -5) == 10);
    CHECK(piecewise_linear(knots, 99) == 0);
}

TEST_CASE("one knot alone is a level") {
    constexpr std::array<Knot, 1> knot{{{3, 7}}};
    CHECK(piecewise_linear(knot, 0) == 7);
    CHECK(piecewise_linear(knot, 8) == 7);
}
