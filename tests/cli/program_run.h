#pragma once

#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

#include "reference/whole_file.h"

/// Runs the built program as a person would, through the shell, in a folder of its own.
namespace program_run {

namespace fs = std::filesystem;
using baitwright::whole_file;

inline void write(const fs::path& path, const std::string& text) {
    fs::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << text;
}

/// A folder that goes away with its owner.
class Folder {
public:
    Folder() {
        std::string name = (fs::temp_directory_path() / "baitwright-XXXXXX").string();
        path_ = mkdtemp(name.data());
    }
    ~Folder() { fs::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] const fs::path& path() const { return path_; }

private:
    fs::path path_;
};

struct Outcome {
    int status;
    std::string output, errors;
};

/// The day on which every test types, so that what is old stays old.
constexpr const char* today = "2026-11-25";

/// `line` is what follows the program's name, as typed. The store is `store.db` in the folder, HOME is the folder.
inline Outcome run(const fs::path& folder, const std::string& line, const std::string& input = "/dev/null",
                   const std::string& locale = "C.UTF-8") {
    const std::string command = "cd '" + folder.string() + "' && LC_ALL=" + locale +
                                " HOME=\"$PWD\" XDG_DATA_HOME=\"$PWD/data\" NO_COLOR=1 BAITWRIGHT_TODAY=" + today +
                                " '" + BAITWRIGHT_PROGRAM + "' " + line + " <" + input + " >output 2>errors";
    const int raw = std::system(command.c_str());
    Outcome outcome{WIFEXITED(raw) ? WEXITSTATUS(raw) : 128 + WTERMSIG(raw), whole_file(folder / "output"),
                    whole_file(folder / "errors")};
    return outcome;
}

}  // namespace program_run
