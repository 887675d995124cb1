#include "cli/version.h"

// The one file that knows the commit: a new commit compiles this file alone.
#include <fmt/format.h>

#include <CLI/Version.hpp>
#include <string_view>

#include "files/files_libraries.h"
#include "report/report_libraries.h"
#include "report/text_table.h"
#include "store/store_libraries.h"

namespace baitwright {

std::string version_text() {
    std::string text = "baitwright " BAITWRIGHT_VERSION;
    if (constexpr std::string_view commit = BAITWRIGHT_COMMIT; !commit.empty())
        text += fmt::format(" (commit {})", commit);
    return text + "\n" +
           paragraph("", fmt::format("With {}, {}, {}, CLI11 {}, fmt {}.{}.{}.", store_libraries(), files_libraries(),
                                     report_libraries(), CLI11_VERSION, FMT_VERSION / 10000, FMT_VERSION / 100 % 100,
                                     FMT_VERSION % 100));
}

}  // namespace baitwright
