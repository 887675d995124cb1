#include "cli/store_file.h"

#include <system_error>

namespace baitwright {

namespace {

/// In quotes where a shell would take it for several words, or for something else.
std::string typed_name(const std::string& name) {
    constexpr const char* plain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789._/-+,";
    if (name.find_first_not_of(plain) == std::string::npos && !name.starts_with('-')) return name;
    std::string typed = "'";
    for (const char letter : name) typed += letter == '\'' ? std::string("'\\''") : std::string(1, letter);
    return typed + "'";
}

}  // namespace

std::filesystem::path store_file(const Surroundings& around) {
    namespace fs = std::filesystem;
    if (around.library.folder)
        throw UsageError("unfit-flag", "--library reads a folder of files, and this is about the store",
                         "leave it out, or name the store with --store FILE");
    const fs::path& store = around.library.store;
    std::error_code failed;
    const fs::path behind = fs::is_symlink(store, failed) ? fs::weakly_canonical(store, failed) : store;
    return failed ? store : behind;
}

std::string command_to_restore(const Arguments& arguments, const std::string& file) {
    const auto named = arguments.value("--store");
    return "baitwright restore " + typed_name(file) + (named ? " --store " + typed_name(*named) : "");
}

}  // namespace baitwright
