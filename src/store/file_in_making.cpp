#include "store/file_in_making.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <cstdio>
#include <set>
#include <string_view>
#include <system_error>

#include "quantities/fault.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view making_front = ".baitwright-", making_end = ".new";
constexpr std::array<std::string_view, 4> sqlite_sides{"", "-journal", "-wal", "-shm"};

std::string reason_of(int error) {
    return std::generic_category().message(error);
}

[[noreturn]] void refuse_making(const std::string& what, int error) {
    const bool full = error == ENOSPC || error == EDQUOT;
    throw StorageError(full ? FaultClass::input_output : FaultClass::cannot_create,
                       full ? "disk-full" : "cannot-create", what + ": " + reason_of(error),
                       full              ? "make room, then try again"
                       : error == ENOENT ? "make its folder first"
                                         : "choose another folder or name, or ask who owns this one");
}

[[noreturn]] void refuse_placing(const fs::path& target, int error) {
    refuse_making(shown(target) + " cannot be written", error);
}

/// The process that a file of that name is of; 0 where it is none of ours.
pid_t maker_of(std::string_view name) {
    for (const std::string_view side : sqlite_sides)
        if (!side.empty() && name.ends_with(side)) name.remove_suffix(side.size());
    if (!name.starts_with(making_front) || !name.ends_with(making_end)) return 0;
    name.remove_prefix(making_front.size());
    if (name.size() < making_end.size()) return 0;
    name.remove_suffix(making_end.size());
    pid_t process = 0;
    int attempt = 0;
    const char* end = name.data() + name.size();
    const auto [dash, failed] = std::from_chars(name.data(), end, process);
    if (failed != std::errc() || dash == end || *dash != '-') return 0;
    const auto [rest, none] = std::from_chars(dash + 1, end, attempt);
    return none == std::errc() && rest == end && process > 0 && attempt >= 0 ? process : 0;
}

/// Those that this process makes now.
std::set<fs::path>& now_in_making() {
    static std::set<fs::path> paths;
    return paths;
}

// A new process may have the number of one that was killed, and find what that one left under its own number.
bool is_left(pid_t process, const std::string& name) {
    if (process != ::getpid()) return ::kill(process, 0) != 0 && errno == ESRCH;
    const auto& made = now_in_making();
    return std::none_of(made.begin(), made.end(),
                        [&](const fs::path& path) { return name.starts_with(path.filename().string()); });
}

/// 0, or the number of the error.
int flush_file(const fs::path& path) {
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return errno;
    const int failed = ::fsync(file) == 0 ? 0 : errno;
    ::close(file);
    return failed;
}

/// 0, or the number of the error: EEXIST where a file stands there. A disk that knows no such renaming has perhaps
/// links; where it has none either, it is looked for first.
int give_new_name(const fs::path& from, const fs::path& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return 0;
    if (errno == EEXIST) return EEXIST;
    if (::link(from.c_str(), to.c_str()) == 0) {
        ::unlink(from.c_str());
        return 0;
    }
    if (errno == EEXIST) return EEXIST;
    struct stat there {};
    if (::lstat(to.c_str(), &there) == 0) return EEXIST;
    return ::rename(from.c_str(), to.c_str()) == 0 ? 0 : errno;
}

}  // namespace

FileInMaking::FileInMaking(const fs::path& folder) {
    int error = 0;
    for (int attempt = 0; attempt < 1000; ++attempt) {
        path_ = folder / (std::string(making_front) + std::to_string(::getpid()) + "-" + std::to_string(attempt) +
                          std::string(making_end));
        if (now_in_making().count(path_) > 0) continue;  // though nothing may stand there at this moment
        const int file = ::open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, S_IRUSR | S_IWUSR);
        if (file >= 0) {
            ::close(file);
            now_in_making().insert(path_);
            for (const std::string_view side : sqlite_sides)
                unfinished_.push_back(std::make_unique<UnfinishedName>(path_.string() + std::string(side)));
            return;
        }
        error = errno;
        if (error != EEXIST) break;
    }
    refuse_making("no file can be made in " + shown(folder), error);
}

FileInMaking::~FileInMaking() {
    now_in_making().erase(path_);
    for (const std::string_view side : sqlite_sides)
        if (!side.empty() || !in_place_) ::unlink((path_.string() + std::string(side)).c_str());
}

void FileInMaking::begin_flush() const {
#ifdef SYNC_FILE_RANGE_WRITE
    const int file = ::open(path_.c_str(), O_WRONLY | O_CLOEXEC);
    if (file < 0) return;
    static_cast<void>(::sync_file_range(file, 0, 0, SYNC_FILE_RANGE_WRITE));
    ::close(file);
#endif
}

bool FileInMaking::put_in_place(const fs::path& target, Standing standing) {
    if (standing == Standing::kept) refuse_log_of_another(target);
    if (const int error = flush_file(path_)) refuse_placing(target, error);
    if (standing == Standing::replaced) {
        if (::rename(path_.c_str(), target.c_str()) != 0) refuse_placing(target, errno);
    } else if (const int error = give_new_name(path_, target)) {
        if (error == EEXIST) return false;
        refuse_placing(target, error);
    }
    in_place_ = true;
    flush_folder(folder_of_file(target));
    return true;
}

void refuse_log_of_another(const fs::path& target) {
    for (const char* side : {"-wal", "-journal"}) {
        const fs::path log = target.string() + side;
        std::error_code failed;
        // In this order: who makes the store this moment gives it its name before anything is written beside it.
        if (const auto size = fs::file_size(log, failed); failed || size == 0) continue;
        if (struct stat there{}; ::lstat(target.c_str(), &there) == 0) continue;
        throw StorageError(
            FaultClass::input_output, "log-without-store",
            shown(target) + " is not there, but " + shown(log) +
                " is: what was last written to a store that was moved or deleted",
            "put that store back beside it; if it is gone for good, move " + shown(log) + " away, then try again");
    }
}

std::vector<fs::path> left_in_making(const fs::path& folder) {
    std::vector<fs::path> left;
    std::error_code failed;
    fs::directory_iterator entry(folder, failed);
    for (const fs::directory_iterator end; !failed && entry != end; entry.increment(failed)) {
        const std::string name = entry->path().filename().string();
        const pid_t process = maker_of(name);
        if (process > 0 && is_left(process, name)) left.push_back(entry->path());
    }
    return left;
}

void sweep_left_in_making(const fs::path& folder) {
    for (const fs::path& path : left_in_making(folder)) ::unlink(path.c_str());
}

void flush_folder(const fs::path& folder) {
    const int open = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (open < 0) return;
    ::fsync(open);
    ::close(open);
}

fs::path folder_of_file(const fs::path& path) {
    return path.has_parent_path() ? path.parent_path() : fs::path(".");
}

}  // namespace baitwright
