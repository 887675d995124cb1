#pragma once

#include <string>
#include <utility>
#include <vector>

/// The sizes that have a name, for help to list; `parse_ball_size` and `parse_vessel_size` (`quantity_text.h`) read
/// them.
namespace baitwright {

/// "walnut" and "30 mm": each name with what it stands for, the smallest first.
std::vector<std::pair<std::string, std::string>> named_ball_sizes();
std::vector<std::pair<std::string, std::string>> named_vessel_sizes();

}  // namespace baitwright
