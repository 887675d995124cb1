#include "store/back_up_store.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <sqlite3.h>

#include <map>
#include <string>
#include <system_error>

#include "store/backup_seal.h"
#include "store/copy_store.h"
#include "store/dated_backups.h"
#include "store/file_header.h"
#include "store/schema.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

SQLite::Database open_sound_store(const fs::path& store) {
    refuse_no_store(store);
    try {
        SQLite::Database source = open_to_copy(store);
        refuse_what_is_no_store(source, store, newest_version());
        if (const int version = version_of(source); version > newest_version()) refuse_newer_store(store, version);
        return source;
    } catch (const SQLite::Exception& error) {
        throw storage_error(error, store);
    }
}

/// How many rows each table has.
std::map<std::string, std::int64_t> rows_of_tables(SQLite::Database& database) {
    std::map<std::string, std::int64_t> rows;
    SQLite::Statement tables(database, "SELECT name FROM sqlite_schema WHERE type = 'table'");
    while (tables.executeStep()) {
        const std::string name = tables.getColumn(0).getString();
        rows[name] = database.execAndGet("SELECT count(*) FROM \"" + name + "\"").getInt64();
    }
    return rows;
}

StorageError not_backed_up(const fs::path& store, const std::string& finding) {
    return {FaultClass::input_output, "damaged-store",
            "the store " + shown(store) + " is damaged, and was not backed up: " + finding,
            "see what is wrong with: baitwright doctor; an older backup comes back with: baitwright restore FILE"};
}

StorageError copying_failed(const SQLite::Exception& error, const fs::path& store, const fs::path& target) {
    const int code = error.getErrorCode();
    if (code == SQLITE_BUSY || code == SQLITE_LOCKED || code == SQLITE_PROTOCOL) return storage_error(error, store);
    if (code == SQLITE_CORRUPT || code == SQLITE_NOTADB) return not_backed_up(store, error.what());
    const bool full = code == SQLITE_FULL;
    return {FaultClass::input_output, full ? "disk-full" : "write-failed",
            full ? "the disk is full; there is no new copy " + shown(target)
                 : "the copy " + shown(target) + " could not be made: " + error.what(),
            full ? "make room, or name another place" : "look at the disk, or name another place"};
}

/// Nothing can change between what is copied and what is counted: all of it is read in one transaction.
StoreContents copy_and_check(SQLite::Database& source, const FileInMaking& copy, const fs::path& store) {
    SQLite::Transaction reading(source);
    source.execAndGet("SELECT count(*) FROM sqlite_schema");
    copy_into(source, copy.path());
    copy.begin_flush();
    SQLite::Database made(copy.path().string(), SQLite::OPEN_READONLY);
    if (const std::string finding = what_is_broken(made); !finding.empty()) throw not_backed_up(store, finding);
    if (rows_of_tables(made) != rows_of_tables(source))
        throw not_backed_up(store, "the copy has not the same number of rows");
    if (made.execAndGet("PRAGMA application_id").getInt() != static_cast<int>(store_application_id))
        throw not_backed_up(store, "the copy is not marked as a store");
    return contents_of(made);
}

StoreContents look_into_store(const fs::path& store) {
    SQLite::Database source = open_sound_store(store);
    try {
        return contents_of(source);
    } catch (const SQLite::Exception& error) {
        throw storage_error(error, store);
    }
}

/// The store's own files are no place for a backup, by whatever names.
void refuse_onto_store(const BackupOrder& order) {
    for (const char* side : {"", "-wal", "-shm", "-journal"}) {
        std::error_code failed;
        const fs::path own = order.store.string() + side;
        if (fs::equivalent(order.target, own, failed) ||
            fs::weakly_canonical(order.target, failed) == fs::weakly_canonical(own, failed))
            throw UsageError("output-is-store", shown(order.target) + " is the store, your library and shed",
                             "name another file or folder");
    }
}

StorageError stands_there(const fs::path& target) {
    return {FaultClass::cannot_create, "file-exists", shown(target) + " is there already",
            "name another file, or a folder for a dated one; --replace writes over it"};
}

/// What is there and is not to be written over, or cannot be: a device, or a store that something is at work on.
void refuse_standing(const BackupOrder& order) {
    std::error_code failed;
    if (!fs::exists(order.target, failed)) return;
    if (!fs::is_regular_file(order.target, failed))
        throw StorageError(FaultClass::cannot_create, "no-file", shown(order.target) + " is a device, not a file",
                           "name a file, or a folder for a dated one");
    if (order.standing == FileInMaking::Standing::kept) throw stands_there(order.target);
    for (const char* side : {"-wal", "-journal"})
        if (const fs::path log = order.target.string() + side; fs::file_size(log, failed) > 0 && !failed)
            throw StorageError(FaultClass::cannot_create, "store-in-use",
                               shown(order.target) + " has changes that are not yet in it, in " + shown(log),
                               "a program is at work on it, or was stopped; name another file");
}

void back_up_to_file(const BackupOrder& order, BackupAnswer& answer) {
    refuse_standing(order);
    const fs::path folder = folder_of_file(order.target);
    sweep_left_in_making(folder);
    refuse_no_store(order.store);
    FileInMaking made(folder);
    answer.contents = back_up_into(made, order.store, order.target);
    if (!made.put_in_place(order.target, order.standing)) throw stands_there(order.target);
    answer.file = order.target.string();
}

DatedBackup back_up_to_folder(const BackupOrder& order, BackupAnswer& answer) {
    refuse_no_store(order.store);
    std::error_code failed;
    fs::create_directory(order.target, failed);  // where it cannot be, making a file in it says why
    sweep_left_in_making(order.target);
    FileInMaking made(order.target);
    DatedBackup dated = next_dated(order.target, order.today);
    answer.contents = back_up_into(made, order.store, order.target / dated_name(dated));
    while (!made.put_in_place(order.target / dated_name(dated), FileInMaking::Standing::kept)) ++dated.number;
    answer.file = (order.target / dated_name(dated)).string();
    return dated;
}

std::vector<std::string> too_old(const BackupOrder& order, const DatedBackup& newest) {
    std::vector<std::string> names;
    if (!order.keep) return names;
    for (const DatedBackup& old : beyond_newest(dated_backups(order.target), newest, *order.keep)) {
        std::error_code failed;  // the store may itself be called so
        if (!fs::equivalent(order.target / dated_name(old), order.store, failed)) names.push_back(dated_name(old));
    }
    return names;
}

}  // namespace

StoreContents back_up_into(FileInMaking& made, const fs::path& store, const fs::path& target) {
    SQLite::Database source = open_sound_store(store);
    try {
        const StoreContents contents = copy_and_check(source, made, store);
        seal_backup(made.path());
        return contents;
    } catch (const SQLite::Exception& error) {
        throw copying_failed(error, store, target);
    }
}

bool means_a_folder(const fs::path& target) {
    std::error_code failed;
    return fs::is_directory(target, failed) || (target.has_relative_path() && !target.has_filename());
}

BackupAnswer back_up(const BackupOrder& order) {
    refuse_onto_store(order);
    BackupAnswer answer{order.doing, {}, {}, {}};
    const bool dated = means_a_folder(order.target);
    if (order.doing == Doing::looked_at) {
        answer.contents = look_into_store(order.store);
        if (!dated) refuse_standing(order);
        answer.file =
            (dated ? order.target / dated_name(next_dated(order.target, order.today)) : order.target).string();
        if (dated) answer.removed = too_old(order, next_dated(order.target, order.today));
        return answer;
    }
    if (!dated) {
        back_up_to_file(order, answer);
        return answer;
    }
    const DatedBackup made = back_up_to_folder(order, answer);
    answer.removed = too_old(order, made);
    for (const std::string& name : answer.removed) {
        std::error_code ignored;
        fs::remove(order.target / name, ignored);
    }
    return answer;
}

}  // namespace baitwright
