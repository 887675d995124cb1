#pragma once

#include <string>

namespace baitwright {

/// Those that write JSON: "nlohmann-json 3.11.2".
std::string report_libraries();

}  // namespace baitwright
