#pragma once

#include "answers/mix/own_values_told.h"
#include "report/json.h"

namespace baitwright {

/// Adds `learnt` where an answer takes something from the log: {bags: [{name, mixes}], hand, cups_weighed, holds_seen,
/// carpets_seen}.
void add_learnt(const LearntUsed& learnt, Json& json);

}  // namespace baitwright
