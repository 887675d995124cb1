#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "cli/command.h"
#include "page/site_files.h"

namespace baitwright {

/// The folder of `--site`. It may be there or not; it may hold such a site, which is made anew. Throws StorageError
/// "folder-in-use" where it holds anything else and `--replace` was not given, "no-folder" where it is a file,
/// UsageError "output-is-store" where the store is in it.
std::filesystem::path site_folder(const Arguments& arguments, const std::filesystem::path& store);

/// Writes all of the site or none of it, and makes the folder where it is not there. Throws StorageError.
void write_site(const std::filesystem::path& folder, const std::vector<SiteFile>& files);

}  // namespace baitwright
