#include "store/name_glance.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>

#include <system_error>

#include "quantities/plain_words.h"
#include "store/file_header.h"
#include "store/schema.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

/// The names of that kind, and what tells them apart.
std::string sql_of(EntryKind kind) {
    switch (kind) {
        case EntryKind::ingredient:
            return "SELECT name, kind FROM ingredient ORDER BY folded";
        case EntryKind::mix:
            return "SELECT name, feel FROM recipe ORDER BY folded";
        case EntryKind::strategy:
            return "SELECT name, '' FROM strategy ORDER BY folded";
        case EntryKind::venue:
        case EntryKind::blend:
            break;
    }
    return fmt::format("SELECT name, '' FROM written WHERE kind = '{}' ORDER BY folded", name_of(kind));
}

/// The path as a URI that can be nothing else (RFC 3986, 2.1; RFC 8089, 2).
std::string as_uri(const fs::path& path, std::string_view with) {
    std::string uri = "file:";
    for (const char letter : fs::absolute(path).string()) {
        const auto byte = static_cast<unsigned char>(letter);
        const bool plain = (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z') ||
                           (byte >= '0' && byte <= '9') || byte == '/' || byte == '.' || byte == '-' || byte == '_';
        uri += plain ? std::string(1, letter) : fmt::format("%{:02X}", byte);
    }
    return uri + "?" + std::string(with);
}

std::unique_ptr<SQLite::Database> opened(const fs::path& path, std::string_view with) {
    auto database = std::make_unique<SQLite::Database>(
        as_uri(path, with), SQLite::OPEN_READONLY | SQLite::OPEN_URI | SQLite::OPEN_NOMUTEX, 0);
    refuse_what_is_no_store(*database, path, newest_version());
    static_cast<void>(version_of(*database));  // the first that is read beyond the header: the log too, where one is
    return database;
}

/// Without a log beside it the file alone is the store, and may be read as one that nobody changes: nothing is laid
/// beside it then. With a log, what another process has laid there is read too, and left as it is; where that is out of
/// reach, the file alone must do.
std::unique_ptr<SQLite::Database> opened_to_glance(const fs::path& path) {
    std::error_code none;
    const auto logged = fs::file_size(path.string() + "-wal", none);
    if (!none && logged > 0) try {
            return opened(path, "mode=ro&readonly_shm=1");
        } catch (const SQLite::Exception&) {  // NOLINT(bugprone-empty-catch): the file alone is tried
        }
    return opened(path, "immutable=1");
}

}  // namespace

NameGlance::NameGlance(const fs::path& path) : path_(path) {
    try {
        database_ = opened_to_glance(path);
    } catch (const SQLite::Exception& error) {
        throw storage_error(error, path);
    }
}

NameGlance::~NameGlance() = default;
NameGlance::NameGlance(NameGlance&&) noexcept = default;

std::vector<GlancedName> NameGlance::asked(const std::string& sql) const {
    try {
        SQLite::Statement rows(*database_, sql);
        std::vector<GlancedName> found;
        while (rows.executeStep())
            found.push_back({mended_name(rows.getColumn(0).getString()), rows.getColumn(1).getString()});
        return found;
    } catch (const SQLite::Exception& error) {
        throw storage_error(error, path_);
    }
}

std::vector<GlancedName> NameGlance::names(EntryKind kind) const {
    return asked(sql_of(kind));
}

std::vector<GlancedName> NameGlance::retired(EntryKind kind) const {
    return asked(
        fmt::format("SELECT name, '' FROM retired WHERE kind = '{}' GROUP BY folded ORDER BY folded", name_of(kind)));
}

std::vector<GlancedName> NameGlance::feels() const {
    return asked("SELECT name, purpose FROM feel ORDER BY below, folded");
}

std::vector<GlancedName> NameGlance::shops() const {
    return asked("SELECT name, '' FROM shop ORDER BY folded");
}

}  // namespace baitwright
