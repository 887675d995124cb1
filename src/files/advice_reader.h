#pragma once

#include <optional>

#include "bait/advice_rule.h"
#include "files/toml_reader.h"

namespace baitwright {

/// One [[advice]]; nothing where it has a fault.
std::optional<AdviceRule> read_advice(TableReader& table);

}  // namespace baitwright
