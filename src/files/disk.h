#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace baitwright {

/// The whole of a file; "-" is standard input. Throws NotFound "no-such-file", StorageError "unreadable-file" (a
/// folder, no permission, over 16 MiB), InputError "not-utf-8".
std::string read_text_file(const std::filesystem::path& path);

/// The same of a file of tables, which may be as large as 4 GiB, and in whatever letters.
std::string read_large_text_file(const std::filesystem::path& path);

/// Writes all or nothing: to a new file beside it, flushed, then renamed over. Throws StorageError of class
/// cannot_create or input_output.
void write_text_file(const std::filesystem::path& path, std::string_view text);

/// A file to be, by its path.
struct FileToWrite {
    std::filesystem::path path;
    std::string_view text;
};

/// Writes all of them or none: first each to a new file beside its place, flushed, then all renamed over, in their
/// order. Throws as `write_text_file` does.
void write_text_files(const std::vector<FileToWrite>& files);

/// Every file below the folder that ends in .toml, in alphabetical order of its path; throws NotFound.
std::vector<std::filesystem::path> toml_files_below(const std::filesystem::path& folder);

}  // namespace baitwright
