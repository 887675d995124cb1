#include "cli/output_file.h"

#include <filesystem>

namespace baitwright {

void keep_unless_told(const std::string& path, const Arguments& arguments) {
    if (std::filesystem::exists(path) && !arguments.has("--replace"))
        throw StorageError(FaultClass::cannot_create, "file-exists", "'" + path + "' is there already",
                           "add --replace to write over it");
}

}  // namespace baitwright
