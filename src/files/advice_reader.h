#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/advice_rule.h"
#include "files/toml_reader.h"

namespace baitwright {

/// One [[advice]]; nothing where it has a fault.
std::optional<AdviceRule> read_advice(TableReader& table);

/// Every [[advice]] of a library file; its faults are those that `read_library_file` tells.
std::vector<AdviceRule> read_advice_rules(std::string_view text, const std::string& file_name);

}  // namespace baitwright
