#pragma once

#include <filesystem>

namespace baitwright {

/// Copies a store as it is on the disk, another process's writing held off or not. It is made under another name first:
/// what stands in the copy's place is replaced and never opened, and a copy that is not whole is never there. Throws
/// StorageError "cannot-copy-store", which names both.
void copy_whole_store(const std::filesystem::path& from, const std::filesystem::path& to);

}  // namespace baitwright
