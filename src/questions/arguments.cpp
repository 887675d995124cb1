#include "questions/arguments.h"

#include <algorithm>

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

std::vector<std::pair<std::string, std::string>> Arguments::in_typed_order(
    const std::vector<std::string>& flags) const {
    std::map<std::string, std::size_t> told;
    std::vector<std::pair<std::string, std::string>> typed;
    const auto tell_next = [&](const std::string& flag) {
        const std::vector<std::string> all = values(flag);
        std::size_t& next = told[flag];
        if (next < all.size()) typed.emplace_back(flag, all[next++]);
    };
    for (const std::string& flag : order_)
        if (std::find(flags.begin(), flags.end(), flag) != flags.end()) tell_next(flag);
    for (const std::string& flag : flags)
        while (told[flag] < values(flag).size()) tell_next(flag);
    return typed;
}

std::optional<std::string> Arguments::usual(const std::string& key) const {
    const auto found = usual_.find(key);
    if (found == usual_.end() || found->second.empty()) return std::nullopt;
    return found->second.front();
}

std::vector<std::string> Arguments::usual_values(const std::string& key) const {
    const auto found = usual_.find(key);
    return found == usual_.end() ? std::vector<std::string>{} : found->second;
}

void Arguments::give_usual(const std::string& flag, const std::string& key) {
    const auto found = usual_.find(key);
    if (found == usual_.end() || found->second.empty() || has(flag)) return;
    flags_[flag] = found->second;
    given_usual_[flag] = key;
}

std::vector<std::string> Arguments::typed_values() const {
    std::vector<std::string> typed;
    for (const auto& [flag, values] : flags_)
        if (given_usual_.count(flag) == 0) typed.insert(typed.end(), values.begin(), values.end());
    return typed;
}

}  // namespace baitwright
