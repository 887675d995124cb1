#include "quantities/quantity.h"

#include <catch2/catch.hpp>

#include "quantities/money.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};

}  // namespace

TEST_CASE("only quantities of one dimension add") {
    STATIC_REQUIRE(Addable<Mass, Mass>);
    STATIC_REQUIRE(Addable<Money, Money>);
    STATIC_REQUIRE_FALSE(Addable<Mass, Volume>);
    STATIC_REQUIRE_FALSE(Addable<Money, Mass>);
    STATIC_REQUIRE_FALSE(Addable<Mass, double>);
}

TEST_CASE("a quantity is entered and left by naming a unit") {
    CHECK((2.5 * kilogram).in(gram) == Approx(2500.0).epsilon(1e-15));
    CHECK((500.0 * gram / (1.0 * litre)).in(gram_per_litre) == Approx(500.0).epsilon(1e-15));
    CHECK(Ratio((1.0 * kilogram) / (500.0 * gram)) == Approx(2.0).epsilon(1e-15));
}
