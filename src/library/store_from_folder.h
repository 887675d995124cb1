#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "files/about_export.h"
#include "store/store.h"

namespace baitwright {

/// What was made of a folder.
struct FolderTaken {
    std::vector<std::string> changed;  ///< entries that a person changed or added since it was written
    std::vector<std::string> fewer;    ///< files with fewer rows than when they were written
};

/// Fills an empty store in the making with what stands in a folder that `export_all` wrote and a person may have
/// changed. Throws NotFound "no-such-folder", InputError with all faults of all files; then nothing is in the store.
FolderTaken fill_from_folder(Store& store, const std::filesystem::path& folder);

}  // namespace baitwright
