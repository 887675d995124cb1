#include "store/new_store.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <random>
#include <string>
#include <system_error>

#include "store/schema.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

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
    const RemovedOnLeaving made{name_beside(path)};
    fill(made.path);
    put_in_place(made.path, path);
}

}  // namespace baitwright
