#include "store/dated_backups.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <fstream>
#include <optional>
#include <string_view>
#include <system_error>
#include <tuple>

#include "quantities/fault.h"
#include "store/schema.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view dated_front = "baitwright-", dated_end = ".db";
constexpr std::size_t day_letters = 10;  // 2026-11-28
constexpr int most_of_a_day = 999999;

/// Nothing where a file of that name is none of them: `-02` and `-1` are not names that are given.
std::optional<DatedBackup> dated_by_name(const std::string& name) {
    if (name.size() < dated_front.size() + day_letters + dated_end.size()) return std::nullopt;
    try {
        DatedBackup backup{parse_date(std::string_view(name).substr(dated_front.size(), day_letters)), 1};
        const std::size_t at = dated_front.size() + day_letters;
        if (name[at] == '-') std::from_chars(name.data() + at + 1, name.data() + name.size(), backup.number);
        const bool fits = backup.number <= most_of_a_day && dated_name(backup) == name;
        return fits ? std::optional(backup) : std::nullopt;
    } catch (const InputError&) {
        return std::nullopt;
    }
}

/// By the bytes of its header: SQLite's, and with our mark.
bool is_store_of_ours(const fs::directory_entry& entry) {
    std::error_code failed;
    if (!fs::is_regular_file(entry.symlink_status(failed)) || failed) return false;
    std::ifstream file(entry.path(), std::ios::binary);
    std::array<unsigned char, 72> header{};
    if (!file.read(reinterpret_cast<char*>(header.data()), header.size())) return false;
    std::uint32_t mark = 0;
    for (std::size_t i = 68; i < 72; ++i) mark = mark << 8U | header.at(i);
    return std::equal(header.begin(), header.begin() + 15, "SQLite format 3") && mark == store_application_id;
}

bool is_older(const DatedBackup& a, const DatedBackup& b) {
    return std::tie(a.on, a.number) < std::tie(b.on, b.number);
}

template <class Heed>
void each_file_by_date(const fs::path& folder, Heed&& heed) {
    std::error_code failed;
    fs::directory_iterator entry(folder, failed);
    for (const fs::directory_iterator end; !failed && entry != end; entry.increment(failed))
        if (const auto dated = dated_by_name(entry->path().filename().string())) heed(*entry, *dated);
}

}  // namespace

std::string dated_name(const DatedBackup& backup) {
    const std::string number = backup.number > 1 ? "-" + std::to_string(backup.number) : "";
    return std::string(dated_front) + date_text(backup.on) + number + std::string(dated_end);
}

std::vector<DatedBackup> dated_backups(const fs::path& folder) {
    std::vector<DatedBackup> backups;
    each_file_by_date(folder, [&](const fs::directory_entry& entry, const DatedBackup& dated) {
        if (is_store_of_ours(entry)) backups.push_back(dated);
    });
    std::sort(backups.begin(), backups.end(), is_older);
    return backups;
}

DatedBackup next_dated(const fs::path& folder, Date on) {
    DatedBackup next{on, 1};
    each_file_by_date(folder, [&](const fs::directory_entry&, const DatedBackup& dated) {
        if (dated.on == on) next.number = std::max(next.number, dated.number + 1);
    });
    return next;
}

std::vector<DatedBackup> beyond_newest(std::vector<DatedBackup> all, const DatedBackup& just_made, std::size_t keep) {
    std::sort(all.begin(), all.end(), is_older);
    const auto is_just_made = [&](const DatedBackup& one) {
        return one.on == just_made.on && one.number == just_made.number;
    };
    all.erase(std::remove_if(all.begin(), all.end(), is_just_made), all.end());
    all.resize(all.size() > keep - 1 ? all.size() - (keep - 1) : 0);
    return all;
}

}  // namespace baitwright
