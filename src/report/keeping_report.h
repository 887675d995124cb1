#pragma once

#include <string>

#include "bait/ingredient.h"
#include "report/json.h"

namespace baitwright {

/// "9 months dry; 2 days damp in the cold; 3 months frozen"; empty where nothing is known.
std::string keeping_text(const Keeping& keeps);

/// {dry_days, cold_days, frozen_days}; what is not known is null.
Json keeping_json(const Keeping& keeps);

}  // namespace baitwright
