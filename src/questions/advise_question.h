#pragma once

#include "bait/advice_rule.h"
#include "questions/arguments.h"

namespace baitwright {

/// The day and the water, as far as they are told. Throws UsageError, naming the flag.
Circumstances circumstances(const Arguments& arguments);

}  // namespace baitwright
