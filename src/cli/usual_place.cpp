#include "cli/usual_place.h"

#include <cstdlib>

#include "quantities/fault.h"

namespace baitwright {

std::string environment(const char* name) {
    const char* value = std::getenv(name);
    return value ? value : "";
}

std::filesystem::path usual_store() {
    std::filesystem::path folder = environment("XDG_DATA_HOME");
    if (!folder.is_absolute()) {
        const std::string home = environment("HOME");
        if (home.empty())
            throw StorageError(FaultClass::cannot_create, "no-home",
                               "neither HOME nor XDG_DATA_HOME is set, so there is no place for the store",
                               "say where it is with --store FILE");
        folder = std::filesystem::path(home) / ".local" / "share";
    }
    return folder / "baitwright" / "baitwright.db";
}

}  // namespace baitwright
