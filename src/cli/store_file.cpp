#include "cli/store_file.h"

#include <system_error>

namespace baitwright {

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

}  // namespace baitwright
