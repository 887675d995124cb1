#pragma once

#include <filesystem>
#include <vector>

namespace baitwright {

class FileInMaking;

/// Makes an empty store, with the folders above it, so that it is there whole or not at all: it is made under another
/// name beside it and then linked into place. Where another process was quicker, that one's store stays.
void make_store(const std::filesystem::path& path);

/// Makes an empty store of the empty file in the making. Throws StorageError.
void make_store_in(const FileInMaking& made);

/// What older programs that were killed while they made this store left of it: `NAME.new-N` and what SQLite kept beside
/// it. One was made in a moment, so an old one is nobody's.
std::vector<std::filesystem::path> left_of_making_store(const std::filesystem::path& path);

}  // namespace baitwright
