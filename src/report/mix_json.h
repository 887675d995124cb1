#pragma once

#include "answers/mix/mix_answer.h"
#include "report/json.h"
#include "report/rows.h"

namespace baitwright {

/// The answer as JSON, unrounded, with the keys of `docs/json.md`.
Json mix_json(const MixAnswer& answer);
Rows mix_rows(const MixAnswer& answer);

}  // namespace baitwright
