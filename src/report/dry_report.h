#pragma once

#include <string>

#include "answers/mix/dry_out.h"
#include "report/json.h"

namespace baitwright {

std::string dry_text(const DryAnswer& answer);
Json dry_json(const DryAnswer& answer);

}  // namespace baitwright
