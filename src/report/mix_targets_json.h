#pragma once

#include "answers/mix/mix_answer.h"
#include "report/json.h"
#include "report/rows.h"

namespace baitwright {

/// The targets of a batch, unrounded, with the keys of `docs/json.md`; an empty list where it is not for several.
Json targets_json(const MixAnswer& answer);

/// A row for each, and one for the water that lets it down, in the columns of `mix_rows`.
void add_target_rows(const MixAnswer& answer, Rows& rows);

}  // namespace baitwright
