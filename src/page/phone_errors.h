#pragma once

#include <vector>

#include "quantities/fault.h"
#include "report/json.h"

namespace baitwright {

/// Errors as a phone tells them: {errors: [{code, message, hint, field}]}. `field` is what the fault is a fault of: the
/// flag or the word whose value it was ("--depth", "AMOUNT"), or a piece of what was told ("part 2", "name"); null
/// where it is a fault of the question.
Json phone_errors(const std::vector<Fault>& faults);

}  // namespace baitwright
