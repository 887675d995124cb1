#include "files/files_libraries.h"

#include <fmt/format.h>
#include <toml++/impl/version.h>

namespace baitwright {

std::string files_libraries() {
    return fmt::format("toml++ {}.{}.{}", TOML_LIB_MAJOR, TOML_LIB_MINOR, TOML_LIB_PATCH);
}

}  // namespace baitwright
