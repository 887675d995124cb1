#include "store/keep_aside.h"

#include <SQLiteCpp/Database.h>

#include <string>
#include <system_error>

#include "store/backup_seal.h"
#include "store/copy_store.h"
#include "store/file_in_making.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr int most_asides_of_a_day = 100000;

/// What SQLite keeps beside a store, its shared memory aside, which is made anew.
void rename_sides(const fs::path& from, const fs::path& to) {
    std::error_code failed;
    for (const char* side : {"-wal", "-journal"}) fs::rename(from.string() + side, to.string() + side, failed);
    fs::remove(from.string() + "-shm", failed);
}

/// False where a file of that name is there.
bool give_second_name(const fs::path& file, const fs::path& name) {
    std::error_code failed;
    fs::create_hard_link(file, name, failed);
    if (!failed) return true;
    if (failed != std::errc::file_exists) fs::copy_file(file, name, failed);  // the disk has no links
    if (failed && failed != std::errc::file_exists) throw cannot_make_store(name, failed.message());
    return !failed;
}

}  // namespace

/// Calls `take` with one name after the other until it gives true.
template <class Take>
fs::path KeptAside::first_free(const fs::path& store, Date today, Take&& take) const {
    for (int number = 1; number < most_asides_of_a_day; ++number) {
        fs::path name = store;
        name += ".before-" + before_ + "-" + date_text(today) + (number > 1 ? "-" + std::to_string(number) : "");
        if (take(name)) return name;
    }
    throw cannot_make_store(store, "too many copies of today stand beside it");
}

KeptAside::~KeptAside() {
    if (path_.empty()) return;
    if (!moved_from_.empty()) rename_sides(path_, moved_from_);
    std::error_code ignored;
    fs::remove(path_, ignored);
}

void KeptAside::copy(const fs::path& store, Date today) {
    FileInMaking made(folder_of_file(store));
    {
        SQLite::Database source = open_to_copy(store);
        copy_into(source, made.path());
    }
    seal_backup(made.path());
    path_ = first_free(store, today,
                       [&](const fs::path& name) { return made.put_in_place(name, FileInMaking::Standing::kept); });
}

void KeptAside::link_damaged(const fs::path& store, Date today) {
    path_ = first_free(store, today, [&](const fs::path& name) { return give_second_name(store, name); });
    moved_from_ = store;
    rename_sides(store, path_);
    flush_folder(folder_of_file(store));
}

void KeptAside::copy_damaged(const fs::path& store, Date today) {
    path_ = first_free(store, today, [&](const fs::path& name) {
        std::error_code failed;
        fs::copy_file(store, name, failed);
        if (failed && failed != std::errc::file_exists) throw cannot_make_store(name, failed.message());
        return !failed;
    });
    std::error_code none;
    for (const char* side : {"-wal", "-journal"}) fs::copy_file(store.string() + side, path_.string() + side, none);
}

fs::path KeptAside::keep() {
    return std::exchange(path_, {});
}

}  // namespace baitwright
