#include "report/report_libraries.h"

#include <fmt/format.h>
#include <nlohmann/json_fwd.hpp>

namespace baitwright {

std::string report_libraries() {
    return fmt::format("nlohmann-json {}.{}.{}", NLOHMANN_JSON_VERSION_MAJOR, NLOHMANN_JSON_VERSION_MINOR,
                       NLOHMANN_JSON_VERSION_PATCH);
}

}  // namespace baitwright
