#include "cli/output_file.h"

#include <unistd.h>

#include <system_error>

#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

/// The same file, by whatever names; or the same name, where it is not there yet.
bool is_same_file(const fs::path& a, const fs::path& b) {
    std::error_code failed;
    if (fs::equivalent(a, b, failed)) return true;
    const fs::path real_a = fs::weakly_canonical(a, failed);
    if (failed) return false;
    const fs::path real_b = fs::weakly_canonical(b, failed);
    return !failed && real_a == real_b;
}

}  // namespace

void keep_unless_told(const std::string& path, const Arguments& arguments) {
    std::error_code failed;
    const fs::file_status there = fs::status(path, failed);
    if (failed && there.type() != fs::file_type::not_found)
        throw StorageError(FaultClass::cannot_create, "cannot-create",
                           in_quotes(path) + " cannot be written: " + failed.message(), "give another name or folder");
    if (fs::exists(there) && !arguments.has("--replace"))
        throw StorageError(FaultClass::cannot_create, "file-exists", "'" + path + "' is there already",
                           "add --replace to write over it");
}

bool goes_to_standard_output(const Arguments& arguments, const std::string& what) {
    if (arguments.value("-o") != "-") return false;
    if (arguments.has("--json"))
        throw UsageError("two-outputs", what + " and its JSON cannot both go to standard output",
                         "leave --json out, or name a file with -o");
    if (::isatty(STDOUT_FILENO))
        throw UsageError("output-is-terminal", what + " is nothing to read on a terminal",
                         "name a file with -o; or send it on, with > FILE or | behind the command");
    return true;
}

void refuse_store_as_output(const CommandSpec& command, const Arguments& arguments, const fs::path& store) {
    if (store.empty()) return;
    for (const Flag& flag : command.flags) {
        const auto path = flag.value == "FILE" ? arguments.value(std::string(flag.name)) : std::nullopt;
        for (const char* beside : {"", "-wal", "-shm", "-journal"})
            if (path && is_same_file(*path, store.string() + beside))
                throw UsageError(
                    "output-is-store",
                    std::string(flag.name) + ": " + in_quotes(*path) + " is the store, your library and shed",
                    "give another name");
    }
}

}  // namespace baitwright
