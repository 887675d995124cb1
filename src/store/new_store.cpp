#include "store/new_store.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <chrono>
#include <random>
#include <string>
#include <system_error>
#include <vector>

#include "store/schema.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr std::chrono::hours longest_making{1};

/// Takes away what runs that were killed while they made this store left of it: `NAME.new-N` and what SQLite kept
/// beside it. One is made in a moment, so an old one is nobody's.
void sweep_unfinished(const fs::path& path) {
    const std::string front = path.filename().string() + ".new-";
    std::error_code failed;
    std::vector<fs::path> leftovers;
    fs::directory_iterator entry(path.parent_path(), failed);
    for (const fs::directory_iterator end; !failed && entry != end; entry.increment(failed)) {
        if (entry->path().filename().string().compare(0, front.size(), front) != 0) continue;
        std::error_code unknown;
        const auto written = fs::last_write_time(entry->path(), unknown);
        if (!unknown && fs::file_time_type::clock::now() - written > longest_making) leftovers.push_back(entry->path());
    }
    for (const fs::path& leftover : leftovers) fs::remove(leftover, failed);
}

fs::path name_beside(const fs::path& path) {
    fs::path beside = path;
    beside += ".new-" + std::to_string(std::random_device{}());
    return beside;
}

void make_folders(const fs::path& path) {
    std::error_code error;
    fs::create_directories(path.parent_path(), error);
    if (error) throw cannot_make_store(path, error.message());
}

// No journal while it is made, for a file that is not whole is never put in place; write-ahead log ever after.
void fill(const fs::path& path) {
    make_private_file(path);
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec("PRAGMA journal_mode = MEMORY");
    database.exec("PRAGMA synchronous = FULL");
    migrate(database, migrations());
    database.exec("PRAGMA journal_mode = WAL");
}

// A link never replaces a file; where the disk has no links, renaming does, within a moment's race.
void put_in_place(const fs::path& made, const fs::path& path) {
    std::error_code error;
    fs::create_hard_link(made, path, error);
    if (error && error != std::errc::file_exists) {
        fs::rename(made, path, error);
        if (error) throw cannot_make_store(path, error.message());
    }
}

struct RemovedOnLeaving {
    fs::path path;
    ~RemovedOnLeaving() {
        std::error_code ignored;
        fs::remove(path, ignored);
    }
};

}  // namespace

void make_private_file(const fs::path& path) {
    // Where it cannot be made, SQLite says why.
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, S_IRUSR | S_IWUSR);
    if (file >= 0) ::close(file);
}

void make_store(const fs::path& path) {
    make_folders(path);
    sweep_unfinished(path);
    const RemovedOnLeaving made{name_beside(path)};
    fill(made.path);
    put_in_place(made.path, path);
}

}  // namespace baitwright
