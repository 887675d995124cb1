#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <vector>

#include "quantities/date.h"

namespace baitwright {

/// A backup in a folder of them: `baitwright-2026-11-28.db`, the second of a day `baitwright-2026-11-28-2.db`.
struct DatedBackup {
    Date on;
    int number = 1;  ///< of that day, from 1
};

std::string dated_name(const DatedBackup& backup);

/// Those in the folder, oldest first: files by such a name that are stores of this program. Others are not looked at.
std::vector<DatedBackup> dated_backups(const std::filesystem::path& folder);

/// The one that a backup of that day is to be.
DatedBackup next_dated(const std::filesystem::path& folder, Date on);

/// Those beyond the newest `keep`, oldest first; never the one that was just made.
std::vector<DatedBackup> beyond_newest(std::vector<DatedBackup> all, const DatedBackup& just_made, std::size_t keep);

}  // namespace baitwright
