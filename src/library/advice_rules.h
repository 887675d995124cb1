#pragma once

#include <vector>

#include "bait/advice_rule.h"
#include "library/open_library.h"

namespace baitwright {

/// The rules of advice: those of `--library` where it has any, else those that are shipped. The store keeps none. The
/// library is to be opened first: that tells the faults of its files.
std::vector<AdviceRule> advice_rules(const LibraryPlace& place);

}  // namespace baitwright
