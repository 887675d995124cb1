#pragma once

#include <map>
#include <string>
#include <vector>

namespace baitwright {

/// What a person always uses, as typed once, by key: "pump" is 80ml, "kit" is "cup 250" and "pot 25", "currency" is
/// EUR, "units" is metric.
using Usual = std::map<std::string, std::vector<std::string>>;

}  // namespace baitwright
