#pragma once

#include <string>

namespace baitwright {

/// Those that keep the store, as they are loaded: "SQLite 3.40.1, SQLiteCpp 3.2.1".
std::string store_libraries();

}  // namespace baitwright
