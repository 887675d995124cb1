#include "cli/run_editor.h"

#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <cstring>

#include "files/disk.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

std::string editor() {
    for (const char* name : {"VISUAL", "EDITOR"})
        if (const char* value = std::getenv(name); value && *value != 0) return value;
    throw UsageError("no-editor", "no editor is named: neither VISUAL nor EDITOR is set",
                     "name one before the command, as in: EDITOR=nano baitwright ...");
}

[[noreturn]] void refuse_editor(const std::string& command, const std::string& why, const std::filesystem::path& file) {
    throw StorageError(FaultClass::input_output, "editor-failed", "the editor " + in_quotes(command) + " " + why,
                       "nothing was changed; your text is in " + file.string());
}

}  // namespace

void run_editor(const std::filesystem::path& file) {
    const std::string command = editor();
    // The editor may be several words, as in "code --wait": a shell parts them; the file's name is a word of its own.
    const std::string line = command + " \"$1\"";
    const pid_t child = ::fork();
    if (child < 0) refuse_editor(command, std::string("cannot be run: ") + std::strerror(errno), file);
    if (child == 0) {
        ::execl("/bin/sh", "sh", "-c", line.c_str(), "sh", file.c_str(), static_cast<char*>(nullptr));
        ::_exit(127);
    }
    int status = 0;
    while (::waitpid(child, &status, 0) < 0)
        if (errno != EINTR) refuse_editor(command, "was lost sight of", file);
    if (WIFEXITED(status) && WEXITSTATUS(status) == 0) return;
    refuse_editor(command,
                  WIFEXITED(status) ? "ended with status " + std::to_string(WEXITSTATUS(status)) : "was stopped", file);
}

std::filesystem::path file_to_edit(const std::string& name, const std::string& text) {
    std::error_code failed;
    const std::filesystem::path folder = std::filesystem::temp_directory_path(failed);
    std::string plain;
    for (const char letter : name)
        plain +=
            (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') || (letter >= '0' && letter <= '9')
                ? letter
                : '-';
    std::string path = ((failed ? "/tmp" : folder) / (plain.substr(0, 60) + "-XXXXXX.toml")).string();
    const int file = ::mkstemps(path.data(), 5);
    if (file < 0)
        throw StorageError(FaultClass::cannot_create, "cannot-create",
                           "no file can be made to edit: " + std::string(std::strerror(errno)),
                           "make room, or name another folder with TMPDIR");
    ::close(file);
    write_text_file(path, text);
    return path;
}

}  // namespace baitwright
