#pragma once

#include "answers/mix/mix_answer.h"
#include "report/json.h"

namespace baitwright {

/// The answer as JSON, unrounded, with the keys of `docs/json.md`.
Json mix_json(const MixAnswer& answer);

}  // namespace baitwright
