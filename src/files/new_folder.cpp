#include "files/new_folder.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <system_error>
#include <utility>

#include "files/new_name.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t block_written = std::size_t{1} << 20U;

std::string folder_in_quotes(const fs::path& path) {
    return in_quotes(std::string_view(path.native()));
}

[[noreturn]] void refuse_folder_made(const fs::path& path, int error) {
    const std::string why = std::generic_category().message(error);
    throw StorageError(FaultClass::cannot_create, "cannot-create",
                       "the folder " + folder_in_quotes(path) + " cannot be made: " + why,
                       error == ENOENT ? "make the folder that it is to stand in first"
                                       : "choose another place, or ask who owns this one");
}

[[noreturn]] void refuse_file_written(const fs::path& path, int error) {
    throw StorageError(FaultClass::input_output, "write-failed",
                       folder_in_quotes(path) + " could not be written: " + std::generic_category().message(error),
                       "make room on the disk or write it elsewhere, then try again");
}

void flush_name(const fs::path& folder) {
    const int open = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (open < 0) return;
    ::fsync(open);
    ::close(open);
}

int rename_folder(const fs::path& from, const fs::path& to) {
    return ::rename(from.c_str(), to.c_str()) == 0 ? 0 : errno;
}

/// In two steps, where the disk knows no exchange.
int exchange_by_steps(const fs::path& made, const fs::path& target) {
    const fs::path aside = folder_of(target) / NewName(target).text(::getpid(), 100);
    if (const int error = rename_folder(target, aside)) return error;
    const int error = rename_folder(made, target);
    if (error != 0)
        rename_folder(aside, target);
    else
        rename_folder(aside, made);
    return error;
}

/// 0, or the number of the error. What stood at the target is at the new folder's old name then, or nothing is.
int exchange_names(const fs::path& made, const fs::path& target) {
    const int error = rename_folder(made, target);
    if (error != ENOTEMPTY && error != EEXIST) return error;
    if (::renameat2(AT_FDCWD, made.c_str(), AT_FDCWD, target.c_str(), RENAME_EXCHANGE) == 0) return 0;
    return errno == EINVAL || errno == ENOSYS ? exchange_by_steps(made, target) : errno;
}

}  // namespace

NewFolder::NewFolder(fs::path target) : target_(std::move(target)) {
    const NewName name(target_);
    sweep_leftovers(folder_of(target_), name);
    for (int attempt = 0; attempt < 100; ++attempt) {
        path_ = folder_of(target_) / name.text(::getpid(), attempt);
        if (::mkdir(path_.c_str(), S_IRWXU) == 0) {
            unfinished_.emplace(path_.native());
            return;
        }
        if (errno != EEXIST) break;
    }
    refuse_folder_made(target_, errno);
}

NewFolder::~NewFolder() {
    for (const File& file : files_) ::close(file.number);
    std::error_code ignored;
    fs::remove_all(path_, ignored);  // once in place, what it took the place of
}

void NewFolder::begin(const std::string& name) {
    write_out();
    const int file = ::open((path_ / name).c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, S_IRUSR | S_IWUSR);
    if (file < 0) refuse_file_written(target_ / name, errno);
    files_.push_back({target_ / name, file});
}

void NewFolder::add(std::string_view text) {
    unwritten_ += text;
    if (unwritten_.size() >= block_written) write_out();
}

void NewFolder::write_out() {
    std::string_view left = unwritten_;
    while (!left.empty()) {
        const ssize_t put = ::write(files_.back().number, left.data(), left.size());
        if (put < 0 && errno != EINTR) refuse_file_written(files_.back().path, errno);
        if (put > 0) left.remove_prefix(static_cast<std::size_t>(put));
    }
    unwritten_.clear();
}

void NewFolder::flush_files() {
    write_out();
    for (; !files_.empty(); files_.pop_back()) {
        const File& file = files_.back();
        const int flushed = ::fsync(file.number) == 0 ? 0 : errno;
        if (flushed != 0) refuse_file_written(file.path, flushed);
        if (::close(file.number) != 0) refuse_file_written(file.path, errno);
    }
}

void NewFolder::take_place() {
    flush_files();
    flush_name(path_);
    if (const int error = exchange_names(path_, target_)) refuse_folder_made(target_, error);
    flush_name(folder_of(target_));
}

namespace {

/// What a folder holds, as far as it tells whether it may be replaced.
struct FolderLook {
    bool empty = true, has_sign = false;
    std::string stranger;  ///< the first by name
};

FolderLook look_into(const fs::path& folder, const std::vector<std::string>& names, const std::string& sign,
                     std::error_code& failed) {
    FolderLook look;
    fs::directory_iterator entry(folder, failed);
    for (const fs::directory_iterator end; !failed && entry != end; entry.increment(failed)) {
        const std::string name = entry->path().filename().string();
        look.empty = false;
        look.has_sign = look.has_sign || name == sign;
        if (std::find(names.begin(), names.end(), name) == names.end() && name != sign)
            look.stranger = look.stranger.empty() ? name : std::min(look.stranger, name);
    }
    return look;
}

std::string text_of_sign(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

}  // namespace

fs::path folder_to_replace(const fs::path& target, const std::vector<std::string>& names, const std::string& sign,
                           const std::function<bool(std::string_view)>& says_so) {
    std::error_code failed;
    fs::path whole = fs::weakly_canonical(fs::absolute(target), failed);
    if (failed) refuse_folder_made(target, failed.value());
    if (!whole.has_filename()) whole = whole.parent_path();
    const fs::file_status status = fs::status(whole, failed);
    if (status.type() == fs::file_type::not_found) return whole;
    if (!fs::is_directory(status))
        throw StorageError(FaultClass::cannot_create, "not-a-folder", folder_in_quotes(target) + " is no folder",
                           "name another");
    const fs::path here = fs::current_path(failed);
    if (std::mismatch(whole.begin(), whole.end(), here.begin(), here.end()).first == whole.end())
        throw StorageError(FaultClass::cannot_create, "folder-in-use", "you are in " + folder_in_quotes(target),
                           "step out of it, or name another folder");
    const FolderLook look = look_into(whole, names, sign, failed);
    if (failed) refuse_folder_made(target, failed.value());
    const bool is_ours =
        look.has_sign && fs::is_regular_file(whole / sign, failed) && says_so(text_of_sign(whole / sign));
    if (look.empty || (is_ours && look.stranger.empty())) return whole;
    const std::string held = !look.stranger.empty() ? in_quotes(look.stranger)
                             : look.has_sign        ? in_quotes(sign) + " of your own"
                                                    : "other files";
    throw StorageError(FaultClass::cannot_create, "folder-not-empty",
                       folder_in_quotes(target) + " holds " + held + " already", "name a new folder, or an empty one");
}

}  // namespace baitwright
