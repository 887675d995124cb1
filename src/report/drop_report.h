#pragma once

#include <string>
#include <vector>

#include "answers/drop/drop_answer.h"
#include "report/json.h"
#include "report/rows.h"
#include "report/told.h"

namespace baitwright {

/// In brief, some ten lines: where it breaks, when it is down, how wide, where to put it in, what hangs.
Told drop_told(const DropAnswer& answer);
/// All that is known of it: each ingredient's own fate, how thick it lies, where to fish over it.
Told drop_full_told(const DropAnswer& answer);
/// Several ways of feeding side by side: feels, sizes or forms.
Told drop_comparison_told(const std::vector<DropAnswer>& answers);

Json drop_json(const DropAnswer& answer);
Json drop_comparison_json(const std::vector<DropAnswer>& answers);

/// A row a class of grains.
Rows drop_rows(const std::vector<DropAnswer>& answers);

}  // namespace baitwright
