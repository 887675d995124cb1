#include "files/disk.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <list>
#include <optional>
#include <system_error>
#include <utility>

#include "files/file_faults.h"
#include "files/new_name.h"
#include "files/utf8.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/unfinished_names.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t largest_file = std::size_t{16} << 20U, largest_tables = std::size_t{4} << 30U;

std::string path_in_quotes(const fs::path& path) {
    return in_quotes(std::string_view(path.native()));
}

std::string reason(int error) {
    return std::generic_category().message(error);
}

std::string hint_for_reading(int error) {
    if (error == EISDIR) return "name a file in it, not the folder";
    if (error == EFBIG) return "a file of the library is at most 16 MB: split it";
    if (error == EACCES || error == EPERM) return "give yourself the right to read it, or choose another";
    return "look at the path once more, and at the disk";
}

[[noreturn]] void refuse_reading(const fs::path& path, int error) {
    if (error == ENOENT || error == ENOTDIR)
        throw NotFound("no-such-file", "there is no file " + path_in_quotes(path), "look at the path once more");
    throw StorageError(FaultClass::input_output, "unreadable-file",
                       path_in_quotes(path) + " cannot be read: " + reason(error), hint_for_reading(error));
}

[[noreturn]] void refuse_creating(const fs::path& path, int error) {
    throw StorageError(
        FaultClass::cannot_create, "cannot-create", path_in_quotes(path) + " cannot be created: " + reason(error),
        error == ENOENT ? "make its folder first" : "choose another folder or name, or ask who owns this one");
}

[[noreturn]] void refuse_writing(const fs::path& path, int error) {
    throw StorageError(FaultClass::input_output, "write-failed",
                       path_in_quotes(path) + " could not be written: " + reason(error),
                       "make room on the disk or write it elsewhere, then try again");
}

/// An open file; closed when it goes.
class Descriptor {
public:
    explicit Descriptor(int number) : number_(number) {}
    ~Descriptor() {
        if (number_ > STDERR_FILENO) ::close(number_);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    Descriptor(Descriptor&&) = delete;
    Descriptor& operator=(Descriptor&&) = delete;

    [[nodiscard]] int number() const { return number_; }
    [[nodiscard]] bool open() const { return number_ >= 0; }
    /// The last chance of a file system to say that a write failed.
    bool close() {
        const int number = number_;
        number_ = -1;
        return ::close(number) == 0;
    }

private:
    int number_;
};

std::string read_all(int file, const fs::path& path, std::size_t most) {
    std::string text;
    std::vector<char> block(std::size_t{1} << 16U);
    for (;;) {
        const ssize_t got = ::read(file, block.data(), block.size());
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) refuse_reading(path, errno);
        if (got == 0) return text;
        text.append(block.data(), static_cast<std::size_t>(got));
        if (text.size() > most) refuse_reading(path, EFBIG);
    }
}

/// Nothing, or the number of the error.
int write_all(int file, std::string_view text) {
    while (!text.empty()) {
        const ssize_t put = ::write(file, text.data(), text.size());
        if (put < 0 && errno == EINTR) continue;
        if (put < 0) return errno;
        text.remove_prefix(static_cast<std::size_t>(put));
    }
    return 0;
}

void check_utf8(std::string_view text, const fs::path& path) {
    const auto bad = first_bad_byte(text);
    if (!bad) return;
    const Position place = place_of_byte(text, *bad);
    throw InputError(Fault{"not-utf-8",
                           "the file is not in UTF-8 from here on",
                           "save it as UTF-8 in the editor",
                           {},
                           place.line,
                           place.column,
                           path.string()});
}

/// A device or a pipe has no place beside it to write to first.
bool is_stream(const fs::path& path) {
    std::error_code ignored;
    const fs::file_status status = fs::status(path, ignored);
    return fs::exists(status) && !fs::is_regular_file(status) && !fs::is_directory(status);
}

void write_stream(const fs::path& path, std::string_view text) {
    Descriptor file(::open(path.c_str(), O_WRONLY | O_CLOEXEC));
    if (!file.open()) refuse_creating(path, errno);
    if (const int error = write_all(file.number(), text)) refuse_writing(path, error);
    if (!file.close()) refuse_writing(path, errno);
}

/// A new file beside the target, removed again unless it takes the target's place.
class NewFile {
public:
    explicit NewFile(fs::path target) : target_(std::move(target)), file_(create()) {
        struct stat before {};
        if (::stat(target_.c_str(), &before) == 0) ::fchmod(file_.number(), before.st_mode & 07777U);
    }
    ~NewFile() {
        if (!in_place_) ::unlink(path_.c_str());
    }
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;
    NewFile(NewFile&&) = delete;
    NewFile& operator=(NewFile&&) = delete;

    void write(std::string_view text) {
        if (const int error = write_all(file_.number(), text)) refuse_writing(target_, error);
        if (::fsync(file_.number()) != 0) refuse_writing(target_, errno);
        if (!file_.close()) refuse_writing(target_, errno);
    }

    void take_place() {
        if (::rename(path_.c_str(), target_.c_str()) != 0) refuse_creating(target_, errno);
        in_place_ = true;
        // The new name survives a power cut once its folder is on the disk; where a folder cannot be flushed, the
        // file itself is whole either way.
        const Descriptor folder(::open(folder_of(target_).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
        if (folder.open()) ::fsync(folder.number());
    }

private:
    int create() {
        const NewName name(target_);
        sweep_leftovers(folder_of(target_), name);
        for (int attempt = 0; attempt < 100; ++attempt) {
            path_ = folder_of(target_) / name.text(::getpid(), attempt);
            const int file = ::open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
            if (file >= 0) {
                unfinished_.emplace(path_.native());
                return file;
            }
            if (errno != EEXIST) break;
        }
        in_place_ = true;  // nothing to remove
        refuse_creating(target_, errno);
    }

    fs::path target_, path_;
    bool in_place_ = false;
    std::optional<UnfinishedName> unfinished_;
    Descriptor file_;
};

}  // namespace

std::string read_text_file(const fs::path& path) {
    const bool standard_input = path == "-";
    const Descriptor file(standard_input ? STDIN_FILENO : ::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file.open()) refuse_reading(path, errno);
    std::string text = read_all(file.number(), path, largest_file);
    check_utf8(text, standard_input ? fs::path("standard input") : path);
    return text;
}

std::string read_large_text_file(const fs::path& path) {
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file.open()) refuse_reading(path, errno);
    return read_all(file.number(), path, largest_tables);
}

void write_text_file(const fs::path& path, std::string_view text) {
    if (is_stream(path)) return write_stream(path, text);
    NewFile file(behind_links(path));
    file.write(text);
    file.take_place();
}

void write_text_files(const std::vector<FileToWrite>& files) {
    std::list<NewFile> written;  // a list, for such a file stays where it is made
    for (const FileToWrite& file : files) written.emplace_back(behind_links(file.path)).write(file.text);
    for (const FileToWrite& file : files)
        if (std::error_code ignored; fs::is_directory(file.path, ignored)) refuse_creating(file.path, EISDIR);
    for (NewFile& file : written) file.take_place();
}

std::vector<fs::path> toml_files_below(const fs::path& folder) {
    std::error_code failed;
    if (!fs::is_directory(folder, failed))
        throw NotFound("no-such-folder", "there is no folder " + path_in_quotes(folder), "look at the path once more");
    std::vector<fs::path> files;
    fs::recursive_directory_iterator entry(folder, failed);
    for (const fs::recursive_directory_iterator end; !failed && entry != end; entry.increment(failed))
        if (std::error_code ignored; entry->path().extension() == ".toml" && entry->is_regular_file(ignored))
            files.push_back(entry->path());
    if (failed) refuse_reading(folder, failed.value());
    std::sort(files.begin(), files.end());
    return files;
}

}  // namespace baitwright
