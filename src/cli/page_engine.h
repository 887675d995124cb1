#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace baitwright {

/// The file that the page and its engine lie in, made where Emscripten is and carried beside the program
/// (`src/build/assemble_page.py`). Its first line says of which version it is, and how many bytes follow.
constexpr const char* page_engine_file = "baitwright-page-engine";

/// The page with its engine, but for the data (`bank_page`), for a program at that place and of that version. Throws
/// StorageError (cannot_create) "no-page-engine" where the file is not there, "unfit-page-engine" where it does not go
/// with the program.
std::string page_engine(const std::filesystem::path& program, std::string_view version);

}  // namespace baitwright
