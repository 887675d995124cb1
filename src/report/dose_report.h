#pragma once

#include "answers/mix/dose_amounts.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

Told dose_told(const DoseAnswer& answer);
Json dose_json(const DoseAnswer& answer);

}  // namespace baitwright
