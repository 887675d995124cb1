#include "store/connection.h"

#include <sqlite3.h>

#include <stdexcept>
#include <system_error>

#include "store/content_mark.h"
#include "store/file_header.h"
#include "store/file_in_making.h"
#include "store/kept_changes.h"
#include "store/new_store.h"
#include "store/schema.h"
#include "store/upgrade_store.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

// An absolute name can be neither a URI nor one of SQLite's special names.
fs::path whole_name(const fs::path& path) {
    std::error_code error;
    fs::path result = fs::absolute(path, error);
    if (error || path.empty()) throw cannot_make_store(path, "there is no such place");
    return result;
}

SQLite::Database open_existing(const fs::path& path, std::chrono::milliseconds patience) {
    return {path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_NOMUTEX, static_cast<int>(patience.count())};
}

bool is_absent(const fs::path& path) {
    std::error_code error;
    const fs::file_status status = fs::symlink_status(path, error);
    if (fs::is_directory(status)) throw cannot_make_store(path, "it is a folder");
    return status.type() == fs::file_type::not_found;
}

SQLite::Database open_or_make(const fs::path& path, std::chrono::milliseconds patience) {
    try {
        try {
            return open_existing(path, patience);
        } catch (const SQLite::Exception& error) {
            if (error.getErrorCode() != SQLITE_CANTOPEN || !is_absent(path)) throw;
        }
        make_store(path);
        return open_existing(path, patience);
    } catch (const SQLite::Exception& error) {
        throw storage_error(error, path);
    }
}

}  // namespace

StoreConnection::StoreConnection(const fs::path& path, std::chrono::milliseconds patience)
    : path_(whole_name(path)), database_(open_or_make(path_, patience)) {
    guarded([&] { check_version(); });
}

void StoreConnection::check_version() {
    refuse_what_is_no_store(database_, path_, newest_version());
    const int version = version_of(database_);
    if (version > newest_version()) refuse_newer_store(path_, version);
    if (version < newest_version()) upgrade(database_, path_, migrations());
}

void StoreConnection::prepare_for_writing() {
    if (writes_) return;
    sweep_left_in_making(folder_of_file(path_));
    database_.exec("PRAGMA journal_mode = WAL");  // it is, unless somebody changed it
    database_.exec("PRAGMA synchronous = FULL");
    database_.exec("PRAGMA foreign_keys = ON");
    writes_ = true;
}

void StoreConnection::write_alone() {
    database_.exec("PRAGMA journal_mode = MEMORY");
    database_.exec("PRAGMA synchronous = OFF");
    database_.exec("PRAGMA cache_size = -100000");  // 100 MB: marks are random, and so are the pages they go to
    database_.exec("PRAGMA foreign_keys = ON");
    writes_ = true;
}

void StoreConnection::write_no_more() {
    statements_.clear();
    database_.exec("PRAGMA journal_mode = WAL");
}

void StoreConnection::change(const std::function<void()>& work) {
    if (changing_) throw std::logic_error("a change of the store inside another");
    struct Changing {
        bool& flag;
        explicit Changing(bool& changing) : flag(changing) { flag = true; }
        ~Changing() { flag = false; }
    };
    guarded([&] {
        look_no_more();
        prepare_for_writing();
        if (changes_made() == Changes::undone) {
            if (!undone_) undone_.emplace(database_, SQLite::TransactionBehavior::IMMEDIATE);
            const Changing changing(changing_);
            return work();
        }
        SQLite::Transaction transaction(database_, SQLite::TransactionBehavior::IMMEDIATE);
        const Changing changing(changing_);
        work();
        transaction.commit();
    });
    // The file alone then holds it, should this process be killed before it ends; where somebody reads, the log keeps
    // it.
    database_.tryExec("PRAGMA wal_checkpoint(PASSIVE)");
}

void StoreConnection::look_from_now() {
    if (changing_ || looking_ || undone_) return;
    guarded([&] { database_.exec("BEGIN"); });
    looking_ = looks_on_ = true;
}

void StoreConnection::look_no_more() {
    if (!looks_on_) return;
    looking_ = looks_on_ = false;
    database_.exec("COMMIT");
}

void StoreConnection::require_change() const {
    if (!changing_) throw std::logic_error("the store is written outside of a change");
}

void StoreConnection::know_marks() {
    if (!knows_marks_) know_mark_of(database_);
    knows_marks_ = true;
}

void StoreConnection::attach_other(const fs::path& path) {
    guarded([&] {
        look_no_more();
        know_marks();
        prepare_for_writing();
        // What is brought in refers to what is brought in: every number is taken from one that was there.
        database_.exec("PRAGMA foreign_keys = OFF; PRAGMA threads = 2");
        SQLite::Statement attach(database_, "ATTACH DATABASE ? AS other");
        attach.bind(1, path.string());
        attach.exec();
        database_.exec(
            "PRAGMA cache_size = -131072; PRAGMA other.mmap_size = 2000000000");  // the other is a copy of ours
    });
}

void StoreConnection::detach_other() {
    statements_.clear();  // some of them read it
    database_.tryExec("DETACH DATABASE other");
    database_.tryExec("PRAGMA foreign_keys = ON");
}

void StoreConnection::run_once(const std::string& sql) {
    require_change();
    database_.exec(sql);
}

void StoreConnection::sort_in_small_heaps(const std::function<void()>& work) {
    database_.exec("PRAGMA cache_size = -8192");
    work();
    database_.exec("PRAGMA cache_size = -131072");
}

SQLite::Statement& StoreConnection::prepared(const char* sql) {
    const auto found = statements_.find(sql);
    if (found != statements_.end()) return found->second;
    return statements_.try_emplace(sql, database_, sql).first->second;
}

StoreConnection::Snapshot::Snapshot(StoreConnection& connection) {
    if (connection.changing_ || connection.looking_ || connection.undone_) return;
    connection.database_.exec("BEGIN");
    begun_ = &connection;
    connection.looking_ = true;
}

StoreConnection::Snapshot::~Snapshot() {
    if (begun_ == nullptr) return;
    begun_->looking_ = false;
    begun_->database_.tryExec("COMMIT");
}

}  // namespace baitwright
