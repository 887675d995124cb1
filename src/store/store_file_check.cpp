#include "store/store_file_check.h"

#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <string>
#include <system_error>

#include "quantities/fault.h"
#include "store/copy_store.h"
#include "store/file_header.h"
#include "store/file_in_making.h"
#include "store/keep_aside.h"
#include "store/new_store.h"
#include "store/schema.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr const char* damaged_todo =
    "try: baitwright doctor --mend; where that does not help, put an older backup back: baitwright restore FILE";

bool is_damage(const SQLite::Exception& error) {
    const int code = error.getErrorCode();
    return code == SQLITE_CORRUPT || code == SQLITE_ERROR;
}

void add_damage(StoreFindings& findings, const std::string& what) {
    findings.add({"damaged-store", "the file is damaged: " + what, damaged_todo, true});
}

void look_with_sqlite(SQLite::Database& database, StoreFindings& findings, StoreContents& contents) {
    database.exec("PRAGMA cache_size = -65536");
    SQLite::Statement integrity(database, "PRAGMA integrity_check(100)");
    while (integrity.executeStep())
        if (const std::string finding = integrity.getColumn(0).getString(); finding != "ok")
            add_damage(findings, finding);
    if (findings.count() == 0) contents = contents_of(database);
}

void look_at_file(const fs::path& store, StoreFindings& findings, StoreContents& contents) {
    try {
        SQLite::Database database = open_to_copy(store);
        refuse_what_is_no_store(database, store, newest_version());
        if (const int version = version_of(database); version > newest_version()) refuse_newer_store(store, version);
        look_with_sqlite(database, findings, contents);
    } catch (const StorageError& error) {
        if (error.faults().front().code != "damaged-store") throw;
        add_damage(findings, "its end is missing");
    } catch (const SQLite::Exception& error) {
        if (!is_damage(error)) throw storage_error(error, store);
        add_damage(findings, error.what());
    }
}

}  // namespace

StoreFindings look_at_store_file(const fs::path& store, StoreContents& contents) {
    refuse_no_store(store);
    StoreFindings findings;
    look_at_file(store, findings, contents);
    for (const fs::path& left : left_beside(store))
        findings.add({"leftover-file", shown(left.filename()) + " was left beside the store by a run that was stopped",
                      "take it away: baitwright doctor --mend", true});
    return findings;
}

bool opens_as_it_is(const fs::path& store) {
    try {
        SQLite::Database database = open_to_copy(store);
        refuse_what_is_no_store(database, store, newest_version());
        return version_of(database) == newest_version();
    } catch (const StorageError&) {
        return false;
    } catch (const SQLite::Exception&) {
        return false;
    }
}

std::vector<fs::path> left_beside(const fs::path& store) {
    std::vector<fs::path> left = left_in_making(folder_of_file(store));
    for (const fs::path& path : left_of_making_store(store)) left.push_back(path);
    return left;
}

void mend_store_file(const fs::path& store) {
    std::error_code failed;
    for (const fs::path& left : left_beside(store)) fs::remove(left, failed);
    StoreFindings findings;
    StoreContents contents;
    look_at_file(store, findings, contents);
    if (findings.count() == 0) return;
    try {
        SQLite::Database database(name_for_sqlite(store), SQLite::OPEN_READWRITE, 5000);
        database.exec("REINDEX");
    } catch (const SQLite::Exception& error) {
        if (!is_damage(error) && error.getErrorCode() != SQLITE_CONSTRAINT) throw storage_error(error, store);
    }
}

fs::path copy_before_mending(const fs::path& store, StoreState state, Date today) {
    KeptAside copy("mend");
    try {
        state == StoreState::sound ? copy.copy(store, today) : copy.copy_damaged(store, today);
    } catch (const SQLite::Exception& error) {
        throw storage_error(error, store);
    }
    return copy.keep();
}

}  // namespace baitwright
