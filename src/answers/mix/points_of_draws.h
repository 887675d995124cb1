#pragma once

#include <cstddef>
#include <vector>

#include "answers/shared/range.h"
#include "quantities/quantity.h"

namespace baitwright {

/// What each draw of everything but one shared factor H wants: U H + V, a row of each.
struct Draws {
    std::vector<double> by_shared;  ///< U, 0 or above
    std::vector<double> fixed;      ///< V

    explicit Draws(std::size_t count) : by_shared(count), fixed(count) {}
};

/// The 5, 50 and 95 % points of U H + V, H log-normal of median 1 with that sigma (above 0) and integrated, not drawn;
/// none below the least. Within a thousandth of the standard deviation or so. **Test**:
/// `tests/answers/mix_doubt_test.cpp`, a million plain draws.
Range<Ratio> points_of(const Draws& draws, double shared_sigma, double least);

}  // namespace baitwright
