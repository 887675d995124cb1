#include "store/store_libraries.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

namespace baitwright {

std::string store_libraries() {
    return std::string("SQLite ") + sqlite3_libversion() + ", SQLiteCpp " + SQLITECPP_VERSION;
}

}  // namespace baitwright
