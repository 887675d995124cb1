#include "store/file_header.h"

#include <sqlite3.h>

#include <array>
#include <cstdint>
#include <string_view>
#include <system_error>

#include "store/schema.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

using Header = std::array<unsigned char, 100>;
constexpr std::size_t at_page_size = 16, at_user_version = 60, at_application_id = 68;
constexpr std::string_view magic{"SQLite format 3\0", 16};

std::uint32_t number_at(const Header& header, std::size_t offset) {
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < 4; ++i) number = number << 8U | header[offset + i];
    return number;
}

// Through SQLite's own handle: closing a second one would drop every lock that this process holds on the file.
sqlite3_file& file_of(SQLite::Database& database) {
    sqlite3_file* file = nullptr;
    sqlite3_file_control(database.getHandle(), nullptr, SQLITE_FCNTL_FILE_POINTER, static_cast<void*>(&file));
    return *file;
}

StorageError no_store(const std::filesystem::path& path, const char* code, const char* finding) {
    return {FaultClass::input_output, code, shown(path) + finding, "name another file, or move this one away"};
}

Header header_of(sqlite3_file& file, const std::filesystem::path& path) {
    Header header{};
    const int result = file.pMethods->xRead(&file, header.data(), static_cast<int>(header.size()), 0);
    if (result == SQLITE_OK) return header;
    if (result != SQLITE_IOERR_SHORT_READ) throw SQLite::Exception("the file cannot be read", SQLITE_IOERR);
    std::error_code error;
    if (std::filesystem::file_size(path, error) == 0)
        throw no_store(path, "empty-file", " is an empty file, not a store");
    throw no_store(path, "not-a-store", " is not a store of this program");
}

// SQLite misses whole pages itself, but takes the missing end of the last one for zeros. With a log beside it the file
// may end anywhere: a checkpoint that was interrupted is done again from the log.
void refuse_broken_page(sqlite3_file& file, const Header& header, const std::filesystem::path& path) {
    const int stated = header[at_page_size] << 8 | header[at_page_size + 1];
    const sqlite3_int64 page_size = stated == 1 ? 65536 : stated;
    sqlite3_int64 size = 0;
    if (file.pMethods->xFileSize(&file, &size) != SQLITE_OK || page_size == 0 || size % page_size == 0) return;
    std::error_code error;
    if (!std::filesystem::exists(path.string() + "-wal", error)) throw damaged_store(path, "its end is missing");
}

}  // namespace

void refuse_newer_store(const std::filesystem::path& path, int version) {
    throw StorageError(FaultClass::bad_data, "newer-store",
                       "the store " + shown(path) + " is of version " + std::to_string(version) +
                           ", made by a newer program; this one knows versions up to " +
                           std::to_string(newest_version()),
                       "bring the program up to date, or name another file");
}

void refuse_what_is_no_store(SQLite::Database& database, const std::filesystem::path& path, int newest) {
    sqlite3_file& file = file_of(database);
    const Header header = header_of(file, path);
    if (std::string_view(reinterpret_cast<const char*>(header.data()), magic.size()) != magic)
        throw no_store(path, "not-a-store", " is not a store of this program");
    if (number_at(header, at_application_id) != store_application_id)
        throw no_store(path, "foreign-database", " is a database of another program");
    refuse_broken_page(file, header, path);
    const auto version = static_cast<int>(number_at(header, at_user_version));
    if (version > newest) refuse_newer_store(path, version);
}

}  // namespace baitwright
