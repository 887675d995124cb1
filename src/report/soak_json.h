#pragma once

#include <vector>

#include "answers/pellets/soak_answer.h"
#include "report/json.h"
#include "report/rows.h"

namespace baitwright {

/// One soak, or the same in waters of different warmth ("temperatures").
Json soak_json(const SoakAnswer& answer);
Json soak_comparison_json(const std::vector<SoakAnswer>& answers);

/// A row a batch.
Rows soak_rows(const std::vector<SoakAnswer>& answers);

}  // namespace baitwright
