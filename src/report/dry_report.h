#pragma once

#include <string>

#include "answers/dry_out.h"
#include "report/json.h"

namespace baitwright {

std::string dry_text(const DryAnswer& answer);
Json dry_json(const DryAnswer& answer);

}  // namespace baitwright
