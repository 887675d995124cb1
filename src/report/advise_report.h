#pragma once

#include "answers/strategy/advise.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

/// The best of each; all of them are in the JSON.
Told advise_told(const AdviseAnswer& answer);
Json advise_json(const AdviseAnswer& answer);

}  // namespace baitwright
