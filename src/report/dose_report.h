#pragma once

#include <string>

#include "answers/mix/dose_amounts.h"
#include "report/json.h"

namespace baitwright {

std::string dose_text(const DoseAnswer& answer);
Json dose_json(const DoseAnswer& answer);

}  // namespace baitwright
