#pragma once

#include <optional>

#include "answers/money/buy_packs.h"

namespace baitwright {

/// Purchases where there are too many ways to try them all: for as long as an ingredient keeps the cheapest packs for
/// what is then needed, each of them bought as late as the others allow. No purchases cost less than the cheapest packs
/// for all of it at once, were it to keep for ever: that is the bound. Nothing where nothing is for sale. Throws
/// InputError "too-many-ways" where it leaves more over than is asked.
/// **Source**: ours; a relaxation for the bound. **Valid for**: as `cheapest_packs_over`. **Test**: never cheaper than
/// the exact programme, and its bound never dearer, `tests/answers/bulk_packs_test.cpp`.
std::optional<PackPlan> bulk_packs(const PackNeed& need);

}  // namespace baitwright
