#pragma once

#include <array>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "cli/command.h"
#include "page/site_files.h"

namespace baitwright {

/// How such a site goes on the home screen of each kind of phone; `home_screen.js` says it in the same words.
struct HomeScreenStep {
    std::string_view phone, what;
};
inline constexpr std::array<HomeScreenStep, 2> home_screen_steps{
    {{"On an iPhone",
      "open the address in its own browser, tap the share sign (a square with an arrow up), then Add to Home Screen. The one on "
      "the home screen keeps notes of its own: use that one from then on."},
     {"On an Android phone", "open the address, tap the menu (three dots), then Add to home screen, or Install."}}};

/// The folder of `--site`. It may be there or not; it may hold such a site, which is made anew. Throws StorageError
/// "folder-in-use" where it holds anything else and `--replace` was not given, "no-folder" where it is a file,
/// UsageError "output-is-store" where the store is in it.
std::filesystem::path site_folder(const Arguments& arguments, const std::filesystem::path& store);

/// Writes all of the site or none of it, and makes the folder where it is not there. Throws StorageError.
void write_site(const std::filesystem::path& folder, const std::vector<SiteFile>& files);

}  // namespace baitwright
