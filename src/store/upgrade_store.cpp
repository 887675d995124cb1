#include "store/upgrade_store.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Database.h>
#include <sqlite3.h>

#include <string>
#include <system_error>

#include "store/new_store.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

// From a connection of its own: the one that migrates holds the write lock, so that nothing changes meanwhile.
void copy_store(const std::filesystem::path& from, const std::filesystem::path& to) {
    SQLite::Database source(from.string(), SQLite::OPEN_READONLY);
    make_private_file(to);
    SQLite::Database copy(to.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    const int result = SQLite::Backup(copy, source).executeStep();
    if (result != SQLITE_DONE) throw SQLite::Exception("it is not whole", result);
}

[[noreturn]] void refuse_copying(const std::filesystem::path& store, const std::filesystem::path& copy,
                                 const std::string& reason) {
    throw StorageError(FaultClass::cannot_create, "cannot-copy-store",
                       "the store " + shown(store) + " is of an older version, and its copy " + shown(copy) +
                           " cannot be made before it is brought up to date: " + reason,
                       "make room, and move away what stands under that name; the store is as it was");
}

void copy_whole_store(const std::filesystem::path& from, const std::filesystem::path& to) {
    std::filesystem::path made = to;
    made += ".new";
    std::error_code failed;
    std::filesystem::remove(made, failed);
    try {
        copy_store(from, made);
    } catch (const SQLite::Exception& error) {
        std::filesystem::remove(made, failed);
        refuse_copying(from, to, error.what());
    }
    std::filesystem::rename(made, to, failed);
    if (!failed) return;
    const std::string reason = failed.message();
    std::filesystem::remove(made, failed);
    refuse_copying(from, to, reason);
}

}  // namespace

void upgrade(SQLite::Database& database, const std::filesystem::path& path, const std::vector<Migration>& steps) {
    std::filesystem::path copy = path;
    copy += ".before-v" + std::to_string(steps.back().version);
    migrate(database, steps, [&] { copy_whole_store(path, copy); });
}

}  // namespace baitwright
