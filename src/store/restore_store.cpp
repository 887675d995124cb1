#include "store/restore_store.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Database.h>
#include <sqlite3.h>

#include <limits>
#include <string>
#include <system_error>

#include "store/backup_seal.h"
#include "store/copy_store.h"
#include "store/file_header.h"
#include "store/file_in_making.h"
#include "store/keep_aside.h"
#include "store/schema.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr int patience_to_restore_ms = 5000;

bool is_there(const fs::path& path) {
    std::error_code failed;
    return fs::status(path, failed).type() != fs::file_type::not_found;
}

StorageError damaged_backup(const RestoreOrder& order, const std::string& finding) {
    return {FaultClass::input_output, "damaged-backup", "the backup " + shown(order.from) + " is damaged: " + finding,
            "take another one; the store is as it was"};
}

void refuse_unfit_source(const RestoreOrder& order) {
    std::error_code failed;
    if (!is_there(order.from))
        throw NotFound("no-such-file", "there is no file " + shown(order.from), "look at the path once more");
    if (fs::is_directory(order.from, failed))
        throw StorageError(FaultClass::input_output, "unreadable-file", shown(order.from) + " is a folder",
                           "name one of the backups in it");
    if (fs::equivalent(order.from, order.store, failed))
        throw UsageError("restore-from-itself", shown(order.from) + " is the store itself",
                         "name the backup that is to take its place");
    if (seal_of(order.from) == Seal::broken) throw damaged_backup(order, "it is not as it was written");
}

StorageError not_restored(const SQLite::Exception& error, const RestoreOrder& order) {
    const int code = error.getErrorCode();
    if (code == SQLITE_FULL)
        return {FaultClass::input_output, "disk-full",
                "the disk is full; the store " + shown(order.store) + " is as it was",
                "make room for two more of its size, then try again"};
    if (code == SQLITE_IOERR)
        return {FaultClass::input_output, "write-failed",
                "nothing was restored: " + std::string(error.what()) + "; the store " + shown(order.store) +
                    " is as it was",
                "look at the disk, then try again"};
    if (code == SQLITE_BUSY || code == SQLITE_LOCKED) return storage_error(error, order.store);
    StorageError told = storage_error(error, order.from);
    return is_damage(told) ? damaged_backup(order, error.what()) : told;
}

/// Refuses what is no sound store that this program knows.
void check_source(SQLite::Database& source, const RestoreOrder& order) {
    refuse_what_is_no_store(source, order.from, newest_version());
    if (const int version = version_of(source); version > newest_version()) refuse_newer_store(order.from, version);
}

void check_whole(SQLite::Database& copy, const RestoreOrder& order) {
    const std::string finding = what_is_broken(copy);
    if (!finding.empty()) throw damaged_backup(order, finding);
}

StoreRestored look_at(const RestoreOrder& order) {
    SQLite::Database source = open_to_copy(order.from);
    check_source(source, order);
    check_whole(source, order);
    const StoreContents contents = contents_of(source);
    return {contents, contents.version < newest_version() ? contents.version : 0, {}};
}

/// What is sealed was checked when it was sealed: it is copied byte for byte, and the copy's seal tells that it is the
/// same. False where it has no seal.
bool copy_sealed(const RestoreOrder& order, const fs::path& copy) {
    if (seal_of(order.from) != Seal::holds) return false;
    std::error_code failed;
    fs::copy_file(order.from, copy, fs::copy_options::overwrite_existing, failed);
    if (failed == std::errc::no_space_on_device) throw SQLite::Exception("the disk is full", SQLITE_FULL);
    if (failed) throw SQLite::Exception(failed.message(), SQLITE_IOERR);
    fs::permissions(copy, fs::perms::owner_read | fs::perms::owner_write, failed);
    if (seal_of(copy) != Seal::holds) throw damaged_backup(order, "it was not read twice alike");
    return true;
}

/// A checked copy of the file, of this program's version.
StoreRestored copy_checked(const RestoreOrder& order, const fs::path& copy) {
    const bool sealed = copy_sealed(order, copy);
    if (!sealed) {
        SQLite::Database source = open_to_copy(order.from);
        check_source(source, order);
        copy_into(source, copy);
    }
    SQLite::Database made(copy.string(), SQLite::OPEN_READWRITE);
    made.exec("PRAGMA journal_mode = MEMORY");
    made.exec("PRAGMA synchronous = OFF");
    check_source(made, order);
    if (!sealed) check_whole(made, order);
    StoreRestored done;
    if (const int version = version_of(made); version < newest_version()) done.brought_from = version;
    migrate(made, migrations());
    done.contents = contents_of(made);
    return done;
}

/// SQLite copies over a store with a log only where the pages are of one size.
void fit_pages(const fs::path& copy, SQLite::Database& present) {
    const int wanted = present.execAndGet("PRAGMA page_size").getInt();
    SQLite::Database made(copy.string(), SQLite::OPEN_READWRITE);
    if (made.execAndGet("PRAGMA page_size").getInt() == wanted) return;
    made.exec("PRAGMA page_size = " + std::to_string(wanted));
    made.exec("VACUUM");
}

/// Over a store that SQLite can open: the first step takes the right to write, so that what is then kept aside is the
/// last state before. Gives its name.
fs::path write_over(const RestoreOrder& order, const fs::path& copy) {
    SQLite::Database present(name_for_sqlite(order.store), SQLite::OPEN_READWRITE, patience_to_restore_ms);
    present.exec("PRAGMA journal_mode = WAL");
    present.exec("PRAGMA synchronous = FULL");
    fit_pages(copy, present);
    SQLite::Database made(copy.string(), SQLite::OPEN_READONLY);
    KeptAside aside("restore");
    {
        SQLite::Backup over(present, made);
        if (over.executeStep(0) != SQLITE_OK) throw SQLite::Exception("it is in use", SQLITE_BUSY);
        aside.copy(order.store, order.today);
        if (over.executeStep() != SQLITE_DONE) throw SQLite::Exception("it is in use", SQLITE_BUSY);
    }
    present.tryExec("PRAGMA wal_checkpoint(PASSIVE)");
    return aside.keep();
}

/// False where the store turns out to be so damaged that SQLite cannot; then it is as it was.
bool write_over(const RestoreOrder& order, const fs::path& copy, fs::path& kept_aside) {
    try {
        kept_aside = write_over(order, copy);
        return true;
    } catch (const SQLite::Exception& error) {
        if (error.getErrorCode() != SQLITE_CORRUPT && error.getErrorCode() != SQLITE_NOTADB) throw;
        return false;
    }
}

/// Whether SQLite can write over what stands there; a database of another program is refused.
bool can_write_over(const fs::path& store) {
    try {
        SQLite::Database present(name_for_sqlite(store), SQLite::OPEN_READWRITE, patience_to_restore_ms);
        refuse_what_is_no_store(present, store, std::numeric_limits<int>::max());
        present.execAndGet("SELECT count(*) FROM sqlite_schema");
        return true;
    } catch (const StorageError& error) {
        if (error.faults().front().code == "foreign-database") throw;
        return false;
    } catch (const SQLite::Exception& error) {
        const int code = error.getErrorCode();
        if (code != SQLITE_NOTADB && code != SQLITE_CORRUPT && code != SQLITE_ERROR) throw;
        return false;
    }
}

StoreRestored restore_checked(const RestoreOrder& order) {
    const fs::path folder = folder_of_file(order.store);
    std::error_code failed;
    if (fs::is_directory(order.store, failed)) throw cannot_make_store(order.store, "it is a folder");
    fs::create_directories(folder, failed);
    sweep_left_in_making(folder);
    FileInMaking made(folder);
    StoreRestored done = copy_checked(order, made.path());
    if (!is_there(order.store) && made.put_in_place(order.store, FileInMaking::Standing::kept)) return done;
    if (can_write_over(order.store) && write_over(order, made.path(), done.kept_aside)) return done;
    KeptAside aside("restore");
    aside.link_damaged(order.store, order.today);
    static_cast<void>(made.put_in_place(order.store, FileInMaking::Standing::replaced));
    done.kept_aside = aside.keep();
    return done;
}

}  // namespace

StoreRestored restore_store(const RestoreOrder& order) {
    refuse_unfit_source(order);
    try {
        return order.doing == Doing::looked_at ? look_at(order) : restore_checked(order);
    } catch (const SQLite::Exception& error) {
        throw not_restored(error, order);
    }
}

}  // namespace baitwright
