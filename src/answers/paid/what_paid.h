#pragma once

#include "answers/paid/paid_answer.h"

namespace baitwright {

/// Strategies over the log: what they brought an hour and for the money, and which is better, and how sure that is.
/// **Test**: `tests/answers/what_paid_test.cpp`.
PaidAnswer what_paid(const PaidRequest& request);

}  // namespace baitwright
