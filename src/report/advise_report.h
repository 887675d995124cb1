#pragma once

#include <string>

#include "answers/strategy/advise_answer.h"
#include "report/json.h"

namespace baitwright {

/// The best of each; all of them are in the JSON.
std::string advise_text(const AdviseAnswer& answer);
Json advise_json(const AdviseAnswer& answer);

}  // namespace baitwright
