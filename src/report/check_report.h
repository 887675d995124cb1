#pragma once

#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "quantities/fault.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

/// What checking an entry found: what is wrong, or nothing and what is odd.
Told check_told(const std::string& word, const std::vector<Fault>& faults, const std::vector<Warning>& odd);

/// `kind` is "recipe" or "strategy": the key of the word, and the first word of the command.
Json check_json(const std::string& kind, const std::string& word, const std::vector<Fault>& faults,
                const std::vector<Warning>& odd);

}  // namespace baitwright
