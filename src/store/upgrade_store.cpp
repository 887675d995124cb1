#include "store/upgrade_store.h"

#include <SQLiteCpp/Database.h>

#include <string>

#include "store/backup_seal.h"
#include "store/copy_store.h"
#include "store/file_in_making.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

[[noreturn]] void refuse_copying(const std::filesystem::path& store, const std::filesystem::path& copy,
                                 const std::string& reason) {
    throw StorageError(FaultClass::cannot_create, "cannot-copy-store",
                       "the store " + shown(store) + " is of an older version, and its copy " + shown(copy) +
                           " cannot be made before it is brought up to date: " + reason,
                       "make room, and move away what stands under that name; the store is as it was");
}

// From a connection of its own: the one that migrates holds the write lock, so that nothing changes meanwhile.
void copy_whole_store(const std::filesystem::path& from, const std::filesystem::path& to) {
    try {
        sweep_left_in_making(folder_of_file(to));
        FileInMaking made(folder_of_file(to));
        {
            SQLite::Database source = open_to_copy(from);
            copy_into(source, made.path());
        }
        seal_backup(made.path());
        static_cast<void>(made.put_in_place(to, FileInMaking::Standing::replaced));
    } catch (const SQLite::Exception& error) {
        refuse_copying(from, to, error.what());
    } catch (const StorageError& error) {
        refuse_copying(from, to, error.what());
    }
}

}  // namespace

void upgrade(SQLite::Database& database, const std::filesystem::path& path, const std::vector<Migration>& steps) {
    std::filesystem::path copy = path;
    copy += ".before-v" + std::to_string(steps.back().version);
    migrate(database, steps, [&] { copy_whole_store(path, copy); });
}

}  // namespace baitwright
