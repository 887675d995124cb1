#pragma once

#include <filesystem>
#include <regex>
#include <string>
#include <vector>

#include "reference/whole_file.h"

/// The files below src/ as texts.
namespace source_files {

namespace fs = std::filesystem;

inline const fs::path source_root = fs::path(BAITWRIGHT_SOURCE_DIR) / "src";

inline std::vector<fs::path> sources() {
    std::vector<fs::path> found;
    for (const auto& entry : fs::recursive_directory_iterator(source_root))
        if (entry.path().extension() == ".h" || entry.path().extension() == ".cpp") found.push_back(entry.path());
    return found;
}

using baitwright::whole_file;

inline std::vector<std::string> matches(const std::string& text, const std::regex& pattern) {
    std::vector<std::string> found;
    for (std::sregex_iterator it(text.begin(), text.end(), pattern), end; it != end; ++it) found.push_back((*it)[1]);
    return found;
}

}  // namespace source_files
