#include "store/copy_store.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <sqlite3.h>

#include <optional>
#include <string_view>
#include <system_error>

#include "quantities/progress.h"
#include "store/schema.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr int patience_to_copy_ms = 5000;

/// As a URI that says that nobody writes: then SQLite makes no files beside it.
std::string immutable_name(const fs::path& path) {
    std::string uri = "file:";
    for (const char letter : path.string()) {
        constexpr std::string_view special = "%?#";
        constexpr std::string_view digits = "0123456789ABCDEF";
        const auto byte = static_cast<unsigned char>(letter);
        if (special.find(letter) == std::string_view::npos)
            uri += letter;
        else
            uri += {'%', digits[byte >> 4U], digits[byte & 15U]};
    }
    return uri + "?immutable=1";
}

/// With a log or a journal beside it, it is not one file alone.
bool is_alone(const fs::path& path) {
    for (const char* side : {"-wal", "-journal"}) {
        std::error_code failed;
        if (const auto size = fs::file_size(path.string() + side, failed); !failed && size > 0) return false;
    }
    return true;
}

/// By blocks, so that it can be told how far it is; of one state, or each change by others would begin it anew.
void copy_pages(SQLite::Database& copy, SQLite::Database& source) {
    constexpr int pages_at_once = 4096;
    std::optional<SQLite::Transaction> reading;
    if (sqlite3_get_autocommit(source.getHandle()) != 0) {
        reading.emplace(source);
        source.execAndGet("SELECT count(*) FROM sqlite_schema");
    }
    SQLite::Backup backup(copy, source);
    std::optional<Progress> progress;
    int result = SQLITE_OK;
    while (result == SQLITE_OK) {
        result = backup.executeStep(pages_at_once);
        const auto all = static_cast<std::size_t>(backup.getTotalPageCount());
        if (!progress) progress.emplace("copying the store", all);
        progress->reach(all - static_cast<std::size_t>(backup.getRemainingPageCount()));
    }
    if (result != SQLITE_DONE) throw SQLite::Exception("it is in use", SQLITE_BUSY);
}

}  // namespace

std::string name_for_sqlite(const fs::path& path) {
    return fs::absolute(path).string();
}

SQLite::Database open_to_copy(const fs::path& path) {
    try {
        SQLite::Database database(name_for_sqlite(path), SQLite::OPEN_READWRITE, patience_to_copy_ms);
        database.execAndGet("SELECT count(*) FROM sqlite_schema");
        return database;
    } catch (const SQLite::Exception& error) {
        const int code = error.getErrorCode();
        if ((code != SQLITE_CANTOPEN && code != SQLITE_READONLY) || !is_alone(path)) throw;
    }
    return {immutable_name(fs::absolute(path)), SQLite::OPEN_READONLY | SQLite::OPEN_URI, patience_to_copy_ms};
}

void copy_into(SQLite::Database& source, const fs::path& empty) {
    SQLite::Database copy(empty.string(), SQLite::OPEN_READWRITE);
    copy.exec("PRAGMA journal_mode = MEMORY");  // what is not whole is never put in place, nor flushed before
    copy.exec("PRAGMA synchronous = OFF");
    copy_pages(copy, source);
    copy.exec("PRAGMA journal_mode = DELETE");
}

std::string what_is_broken(SQLite::Database& copy) {
    copy.exec("PRAGMA mmap_size = 2000000000");
    SQLite::Statement integrity(copy, "PRAGMA integrity_check(1)");
    if (integrity.executeStep() && integrity.getColumn(0).getString() != "ok")
        return integrity.getColumn(0).getString();
    return {};
}

StoreContents contents_of(SQLite::Database& database) {
    StoreContents contents;
    contents.version = version_of(database);
    const auto count = [&](const char* table, const std::string& where = {}) -> std::int64_t {
        if (!database.tableExists(table)) return 0;
        return database.execAndGet("SELECT count(*) FROM " + std::string(table) + where).getInt64();
    };
    contents.ingredients = count("ingredient");
    contents.mixes = count("recipe");
    contents.strategies = count("strategy");
    contents.venues = count("written", " WHERE kind = 'venue'");
    contents.blends = count("written", " WHERE kind = 'blend'");
    contents.shed_entries = count("stock_entry");
    contents.sessions =
        count("log_session", " WHERE entry_id NOT IN (SELECT undoes FROM log_entry WHERE undoes IS NOT NULL)");
    contents.log_entries = count("log_entry");
    contents.bytes =
        database.execAndGet("SELECT page_count * page_size FROM pragma_page_count, pragma_page_size").getInt64();
    return contents;
}

}  // namespace baitwright
