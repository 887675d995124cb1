#pragma once

#include <string>

#include "quantities/quantity.h"

namespace baitwright {

/// How long a feed takes in the water, an estimate within a factor of two or three, in the one way that `drop` says it:
/// "at once", "1.8 s", "9 s", "35 s", "1 min 20 s", "6 min 30 s"; from 10 min as `shown_time`.
std::string shown_wait(Time time);
/// A range, the unit once where it is the same: "6 to 35 s", "45 s to 2 min", "about 9 s", "at once",
/// "up to 3 s".
std::string shown_wait(Time low, Time high);

}  // namespace baitwright
