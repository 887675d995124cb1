#pragma once

#include <string>

namespace baitwright {

/// Those that read files: "toml++ 3.3.0".
std::string files_libraries();

}  // namespace baitwright
