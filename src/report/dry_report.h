#pragma once

#include "answers/mix/dry_out.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

Told dry_told(const DryAnswer& answer);
Json dry_json(const DryAnswer& answer);

}  // namespace baitwright
