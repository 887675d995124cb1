#pragma once

#include "answers/blend/swap_answer.h"
#include "report/json.h"
#include "report/rows.h"
#include "report/told.h"

namespace baitwright {

/// What stands in, what changes in the dry mix, in the water and in the feel.
Told swap_told(const SwapAnswer& answer);
Json swap_json(const SwapAnswer& answer);
Rows swap_rows(const SwapAnswer& answer);

}  // namespace baitwright
