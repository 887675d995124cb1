#include "cli/beside_program.h"

#include <system_error>

namespace baitwright {

namespace fs = std::filesystem;

fs::path this_program() {
    std::error_code unreadable;
    return fs::read_symlink("/proc/self/exe", unreadable);
}

fs::path installed_for(const fs::path& program) {
    return (program.parent_path() / BAITWRIGHT_MODULE_FOLDER).lexically_normal();
}

fs::path beside_program(std::string_view file, const fs::path& program) {
    if (!program.is_absolute()) return {};
    std::error_code unreadable;
    for (const fs::path& folder : {program.parent_path(), installed_for(program)})
        if (fs::exists(folder / file, unreadable)) return folder / file;
    return {};
}

}  // namespace baitwright
