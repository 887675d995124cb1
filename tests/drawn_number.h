#pragma once

#include <rapidcheck.h>

namespace baitwright {

/// A whole number from low to high, both included, for a property to be tried with.
inline int between(int low, int high) {
    return *rc::gen::inRange(low, high + 1);
}

}  // namespace baitwright
