#pragma once

#include <filesystem>

namespace baitwright {

/// Makes an empty store, with the folders above it, so that it is there whole or not at all: it is made under another
/// name beside it and then linked into place. Where another process was quicker, that one's store stays.
void make_store(const std::filesystem::path& path);

/// Makes an empty file that only its owner may read and write, where there is none yet: SQLite gives the files that it
/// makes beside a store (its log, its journal) the rights of the store.
void make_private_file(const std::filesystem::path& path);

}  // namespace baitwright
