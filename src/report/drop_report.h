#pragma once

#include <string>
#include <vector>

#include "answers/drop/drop_answer.h"
#include "report/json.h"
#include "report/rows.h"
#include "report/told.h"

namespace baitwright {

Told drop_told(const DropAnswer& answer);
/// Several ways of feeding side by side: feels, sizes or forms.
Told drop_comparison_told(const std::vector<DropAnswer>& answers);

Json drop_json(const DropAnswer& answer);
Json drop_comparison_json(const std::vector<DropAnswer>& answers);

/// A row a class of grains.
Rows drop_rows(const std::vector<DropAnswer>& answers);

}  // namespace baitwright
