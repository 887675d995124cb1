#include "answers/shared/store_health.h"

#include <algorithm>

namespace baitwright {

void StoreFindings::add(StoreFinding finding) {
    const auto same = [&](const StoreFinding& other) { return other.code == finding.code; };
    const auto known = [&](const StoreFinding& other) { return same(other) && other.what == finding.what; };
    if (std::any_of(told_.begin(), told_.end(), known)) return;
    const auto alike = static_cast<std::size_t>(std::count_if(told_.begin(), told_.end(), same));
    if (alike < most_alike)
        told_.push_back(std::move(finding));
    else
        ++untold_;
}

void StoreFindings::add_all(const StoreFindings& others) {
    for (const StoreFinding& finding : others.told_) add(finding);
    untold_ += others.untold_;
}

bool StoreFindings::any_mendable() const {
    return std::any_of(told_.begin(), told_.end(), [](const StoreFinding& finding) { return finding.mendable; });
}

bool StoreFindings::has(const std::string& code) const {
    return std::any_of(told_.begin(), told_.end(), [&](const StoreFinding& finding) { return finding.code == code; });
}

}  // namespace baitwright
