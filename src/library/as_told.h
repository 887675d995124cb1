#pragma once

#include <set>
#include <string>

#include "answers/shared/log_answer.h"
#include "library/log_groups.h"

namespace baitwright {

/// An entry as a person told it, without what was worked out from it when it was entered: two that are told alike are
/// the same. Their numbers do not count.
std::string as_told(LogEntry entry);
std::multiset<std::string> as_told(const LoggedGroup& group);
std::multiset<std::string> as_told(const GroupToEnter& group);

}  // namespace baitwright
