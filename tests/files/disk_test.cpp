#include "files/disk.h"

#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <csignal>
#include <cstdlib>
#include <fstream>

#include "quantities/fault_of.h"

using namespace baitwright;
namespace fs = std::filesystem;

namespace {

/// A folder of its own for each test, gone afterwards.
class TestFolder {
public:
    TestFolder() {
        std::string name = (fs::temp_directory_path() / "baitwright-XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        path_ = name;
    }
    ~TestFolder() {
        std::error_code ignored;
        fs::permissions(path_, fs::perms::owner_all, ignored);
        fs::remove_all(path_, ignored);
    }
    TestFolder(const TestFolder&) = delete;
    TestFolder& operator=(const TestFolder&) = delete;
    fs::path operator/(const char* name) const { return path_ / name; }
    [[nodiscard]] const fs::path& path() const { return path_; }
    [[nodiscard]] std::ptrdiff_t entries() const {
        return std::distance(fs::directory_iterator(path_), fs::directory_iterator());
    }

private:
    fs::path path_;
};

template <class Action>
FaultClass class_of(const Action& action) {
    try {
        action();
    } catch (const Error& error) {
        return error.fault_class();
    }
    return FaultClass::answer_is_no;
}

}  // namespace

TEST_CASE("a written file is read back, and nothing else stays in its folder") {
    const TestFolder folder;
    write_text_file(folder / "a.toml", "first\n");
    write_text_file(folder / "a.toml", "name = \"é\"\n");
    CHECK(read_text_file(folder / "a.toml") == "name = \"é\"\n");
    CHECK(folder.entries() == 1);
}

TEST_CASE("a file keeps its permissions, and a link stays a link") {
    const TestFolder folder;
    write_text_file(folder / "a.toml", "old");
    fs::permissions(folder / "a.toml", fs::perms::owner_read | fs::perms::owner_write);
    fs::create_symlink("a.toml", folder / "link.toml");
    write_text_file(folder / "link.toml", "new");
    CHECK(fs::is_symlink(folder / "link.toml"));
    CHECK(read_text_file(folder / "a.toml") == "new");
    CHECK(fs::status(folder / "a.toml").permissions() == (fs::perms::owner_read | fs::perms::owner_write));
}

TEST_CASE("of several files all are written, or none is changed and none is left") {
    const TestFolder folder;
    write_text_files({{folder / "a.txt", "first"}, {folder / "b.txt", "first"}});
    CHECK(read_text_file(folder / "a.txt") + read_text_file(folder / "b.txt") == "firstfirst");
    fs::create_directory(folder / "taken");
    for (const fs::path& place : {folder / "no" / "c.txt", folder / "taken"}) {
        const auto write = [&] { write_text_files({{folder / "a.txt", "second"}, {place, "second"}}); };
        CHECK(class_of(write) == FaultClass::cannot_create);
        CHECK(read_text_file(folder / "a.txt") == "first");
        CHECK(folder.entries() == 3);
    }
}

TEST_CASE("a full device is reported") {
    if (!fs::exists("/dev/full")) return;
    const auto write = [] { write_text_file("/dev/full", "text"); };
    CHECK(class_of(write) == FaultClass::input_output);
    CHECK(fault_of(write).code == "write-failed");
    CHECK(fs::is_character_file("/dev/full"));
}

TEST_CASE("where there is no room for the new text, the old stays") {
    const TestFolder folder;
    write_text_file(folder / "a.toml", "old");
    const pid_t child = ::fork();
    if (child == 0) {
        const rlimit ten_bytes{10, 10};
        std::signal(SIGXFSZ, SIG_IGN);
        ::setrlimit(RLIMIT_FSIZE, &ten_bytes);
        ::_exit(class_of([&] { write_text_file(folder / "a.toml", std::string(100, 'x')); }) == FaultClass::input_output
                    ? 0
                    : 1);
    }
    int status = -1;
    ::waitpid(child, &status, 0);
    CHECK(status == 0);
    CHECK(read_text_file(folder / "a.toml") == "old");
    CHECK(folder.entries() == 1);
}

TEST_CASE("a folder that is not there, or a folder in the file's place, is reported") {
    const TestFolder folder;
    CHECK(class_of([&] { write_text_file(folder / "no" / "a.toml", "text"); }) == FaultClass::cannot_create);
    fs::create_directory(folder / "a.toml");
    CHECK(class_of([&] { write_text_file(folder / "a.toml", "text"); }) == FaultClass::cannot_create);
    CHECK(folder.entries() == 1);
}

TEST_CASE("a folder without permission to write is reported") {
    if (::geteuid() == 0) return;  // root may write anywhere
    const TestFolder folder;
    fs::permissions(folder.path(), fs::perms::owner_read | fs::perms::owner_exec);
    CHECK(class_of([&] { write_text_file(folder / "a.toml", "text"); }) == FaultClass::cannot_create);
}

TEST_CASE("what cannot be read says why") {
    const TestFolder folder;
    CHECK(class_of([&] { read_text_file(folder / "no.toml"); }) == FaultClass::not_found);
    CHECK(fault_of([&] { read_text_file(folder / "no.toml"); }).code == "no-such-file");
    CHECK(fault_of([&] { read_text_file(folder.path()); }).code == "unreadable-file");
    write_text_file(folder / "big", std::string((std::size_t{16} << 20U) + 1, 'x'));
    CHECK(fault_of([&] { read_text_file(folder / "big"); }).code == "unreadable-file");
}

TEST_CASE("the first byte that is not UTF-8 is shown") {
    const TestFolder folder;
    for (const char* bad :
         {"\xFF", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE2\x82", "\x80", "\xE0\x80\xAF"}) {
        write_text_file(folder / "a.toml", std::string("ab\né") + bad);
        const Fault fault = fault_of([&] { read_text_file(folder / "a.toml"); });
        CHECK(fault.code == "not-utf-8");
        CHECK(fault.line == 2);
        CHECK(fault.column == 2);
        CHECK(fault.file == (folder / "a.toml").string());
    }
    write_text_file(folder / "a.toml", "é½€😀\U0010FFFF\uE000");
    CHECK_NOTHROW(read_text_file(folder / "a.toml"));
}

TEST_CASE("the TOML files below a folder come in alphabetical order") {
    const TestFolder folder;
    fs::create_directories(folder / "b" / "c");
    for (const char* name : {"z.toml", "a.toml", "b/m.toml", "b/c/n.toml", "b/other.txt", ".toml"})
        std::ofstream(folder / name) << "x";
    fs::create_directory(folder / "d.toml");
    const std::vector<fs::path> expected{folder / "a.toml", folder / "b/c/n.toml", folder / "b/m.toml",
                                         folder / "z.toml"};
    CHECK(toml_files_below(folder.path()) == expected);
    CHECK(class_of([&] { toml_files_below(folder / "no"); }) == FaultClass::not_found);
}
