#pragma once

#include <filesystem>

#include "store/schema.h"

namespace baitwright {

/// `migrate` for a store with entries in it: first copies it to `NAME.before-vN`, N being the newest version. It is
/// copied as it is on the disk, another process's writing held off or not, and under another name first: what stands in
/// the copy's place is replaced and never opened, and a copy that is not whole is never there. Throws StorageError
/// "cannot-copy-store", which names both.
void upgrade(SQLite::Database& database, const std::filesystem::path& path, const std::vector<Migration>& steps);

}  // namespace baitwright
