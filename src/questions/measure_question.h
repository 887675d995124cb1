#pragma once

#include <vector>

#include "bait/ingredient.h"
#include "bait/key_value.h"
#include "quantities/date.h"
#include "questions/arguments.h"

namespace baitwright {

/// What the kitchen tests say: the keys with their values, and how and when each was measured. Throws UsageError,
/// naming the flag.
std::vector<KeyValue> kitchen_tests(const Arguments& arguments, Date today);

/// What they say of the marks of the ingredient as it was: an absorption alone must lie below its slump, and a bag's
/// moisture moves the marks that were not measured. Throws UsageError.
void heed_marks(const Arguments& arguments, const Ingredient& old, std::vector<KeyValue>& measured);

}  // namespace baitwright
