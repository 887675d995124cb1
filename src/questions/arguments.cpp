#include "questions/arguments.h"

namespace baitwright {

std::optional<std::string> Arguments::value(const std::string& flag) const {
    const auto found = flags_.find(flag);
    if (found == flags_.end() || found->second.empty()) return std::nullopt;
    return found->second.front();
}

std::vector<std::string> Arguments::values(const std::string& flag) const {
    const auto found = flags_.find(flag);
    return found == flags_.end() ? std::vector<std::string>{} : found->second;
}

}  // namespace baitwright
