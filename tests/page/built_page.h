#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

/// The page with its engine as this build has made it, beside the program, without the line that marks it; nothing
/// where it was built without Emscripten.
inline std::string built_page() {
    std::ifstream file(std::filesystem::path(BAITWRIGHT_PROGRAM).parent_path() / "baitwright-page-engine",
                       std::ios::binary);
    std::string mark;
    std::getline(file, mark);
    return {std::istreambuf_iterator<char>(file), {}};
}
