#include "cli/version.h"

// The one file that knows the commit: a new commit compiles this file alone.
#include <fmt/format.h>
#include <toml++/impl/version.h>

#include <CLI/Version.hpp>
#include <nlohmann/json_fwd.hpp>
#include <string_view>

#include "report/text_table.h"
#include "store/store_libraries.h"

namespace baitwright {

std::string version_text() {
    std::string text = "baitwright " BAITWRIGHT_VERSION;
    if (constexpr std::string_view commit = BAITWRIGHT_COMMIT; !commit.empty())
        text += fmt::format(" (commit {})", commit);
    return text + "\n" +
           paragraph("",
                     fmt::format("With {}, toml++ {}.{}.{}, nlohmann-json {}.{}.{}, CLI11 {}, fmt {}.{}.{}.",
                                 store_libraries(), TOML_LIB_MAJOR, TOML_LIB_MINOR, TOML_LIB_PATCH,
                                 NLOHMANN_JSON_VERSION_MAJOR, NLOHMANN_JSON_VERSION_MINOR, NLOHMANN_JSON_VERSION_PATCH,
                                 CLI11_VERSION, FMT_VERSION / 10000, FMT_VERSION / 100 % 100, FMT_VERSION % 100));
}

}  // namespace baitwright
