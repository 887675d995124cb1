#pragma once

#include <string>

#include "answers/mix/right_a_mix.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

/// Where the tub stands and what puts it right.
Told tub_told(const TubAnswer& answer);
Json tub_json(const TubAnswer& answer);

}  // namespace baitwright
