#pragma once

#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <functional>
#include <vector>

/// The tables of the store and how they came about. A change of the tables is one more entry in `migrations()`, never a
/// change to an old one: stores of every old version are about.
namespace baitwright {

/// "bait" as four bytes; SQLite keeps it in the file's header, and `file` shows it.
inline constexpr std::uint32_t store_application_id = 0x62616974;

/// The step from the version before to this one.
struct Migration {
    int version;
    const char* sql;
};

/// Every step, oldest first; the last one's version is what this program reads and writes.
const std::vector<Migration>& migrations();
int newest_version();

/// The version that the store has now, seen through SQLite and hence with what other processes have just written.
int version_of(SQLite::Database& database);

/// Runs the steps that the store lacks, all in one IMMEDIATE transaction with the new version; where there are any,
/// `before` first.
void migrate(
    SQLite::Database& database, const std::vector<Migration>& steps, const std::function<void()>& before = [] {});

}  // namespace baitwright
