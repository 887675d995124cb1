// Sums over few of many unknowns, by hand.
#include "answers/learn/linear_form.h"

#include <catch2/catch.hpp>

namespace baitwright {

TEST_CASE("two sums make one, whichever of them ends first") {
    const LinearForm early{{1, 2.0}, {3, 4.0}}, late{{3, 1.0}, {5, 6.0}, {8, 0.5}};
    CHECK(sum_of(early, late, -2) == LinearForm{{1, 2.0}, {3, 2.0}, {5, -12.0}, {8, -1.0}});
    CHECK(sum_of(late, early, 0.5) == LinearForm{{1, 1.0}, {3, 3.0}, {5, 6.0}, {8, 0.5}});
    CHECK(sum_of({}, early, 3) == LinearForm{{1, 6.0}, {3, 12.0}});
    CHECK(sum_of(early, {}, 3) == early);
}

TEST_CASE("a sum is worth what its unknowns make of it, and as doubtful as they are") {
    const LinearForm form{{0, 2.0}, {2, -3.0}};
    CHECK(value_of(form, {10, 100, 5}) == 5.0);
    CHECK(variance_before(form) == 13.0);
}

TEST_CASE("many sums are added up, and nothing of them is left for the next") {
    FormSum sum(4);
    sum.add({{3, 1.0}, {1, 2.0}}, 2);
    sum.add({{1, 5.0}}, -1);
    CHECK(sum.take() == LinearForm{{1, -1.0}, {3, 2.0}});
    sum.add({{0, 1.0}}, 1);
    CHECK(sum.take() == LinearForm{{0, 1.0}});
}

}  // namespace baitwright
