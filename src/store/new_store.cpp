#include "store/new_store.h"

#include <chrono>
#include <string>
#include <system_error>
#include <vector>

#include "store/file_in_making.h"
#include "store/schema.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr std::chrono::hours longest_making{1};

void make_folders(const fs::path& path) {
    std::error_code error;
    fs::create_directories(path.parent_path(), error);
    if (error) throw cannot_make_store(path, error.message());
}

// No journal while it is made, for a file that is not whole is never put in place; write-ahead log ever after.
void fill(const fs::path& path) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
    database.exec("PRAGMA journal_mode = MEMORY");
    database.exec("PRAGMA synchronous = FULL");
    migrate(database, migrations());
    database.exec("PRAGMA journal_mode = WAL");
}

/// "17", "17-wal": what stood behind `NAME.new-`.
bool is_number_of_making(std::string_view rest) {
    const std::size_t digits = std::min(rest.find_first_not_of("0123456789"), rest.size());
    const std::string_view side = rest.substr(digits);
    return digits > 0 && (side.empty() || side == "-wal" || side == "-shm" || side == "-journal");
}

}  // namespace

std::vector<fs::path> left_of_making_store(const fs::path& path) {
    const std::string front = path.filename().string() + ".new-";
    std::error_code failed;
    std::vector<fs::path> left;
    fs::directory_iterator entry(folder_of_file(path), failed);
    for (const fs::directory_iterator end; !failed && entry != end; entry.increment(failed)) {
        const std::string name = entry->path().filename().string();
        if (!name.starts_with(front) || !is_number_of_making(std::string_view(name).substr(front.size()))) continue;
        std::error_code unknown;
        const auto written = fs::last_write_time(entry->path(), unknown);
        if (!unknown && fs::file_time_type::clock::now() - written > longest_making) left.push_back(entry->path());
    }
    return left;
}

void make_store_in(const FileInMaking& made) {
    try {
        fill(made.path());
    } catch (const SQLite::Exception& error) {
        throw storage_error(error, made.path());
    }
}

void make_store(const fs::path& path) {
    refuse_log_of_another(path);
    make_folders(path);
    const fs::path folder = folder_of_file(path);
    sweep_left_in_making(folder);
    try {
        FileInMaking made(folder);
        fill(made.path());
        static_cast<void>(made.put_in_place(path, FileInMaking::Standing::kept));
    } catch (const StorageError& error) {
        throw cannot_make_store(path, error.what());
    }
}

}  // namespace baitwright
