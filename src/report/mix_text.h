#pragma once

#include <string>

#include "answers/mix/mix_answer.h"
#include "report/told.h"

namespace baitwright {

/// The answer as a person reads it at the bench: a table to weigh from, the water, what it comes to, what to do in
/// order, how sure it is, cautions.
Told mix_told(const MixAnswer& answer);

}  // namespace baitwright
