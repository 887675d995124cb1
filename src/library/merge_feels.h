#pragma once

#include <cstdint>

#include "answers/shared/merge_answer.h"
#include "quantities/date.h"
#include "store/store.h"

namespace baitwright {

/// Brings the feels of another store into one: of what both have, that stands which changed last (of equal stamps the
/// greater text). Where the feels chosen so would not rise from the driest to the wettest, all of them are as the store
/// with the later change has them, with those of the other that find a place between. What does not stand is kept among
/// the old versions. Gives how many came in or became others. Inside one change.
std::int64_t merge_feels(Store& ours, const Store& theirs, Date today, MergeAnswer& answer);

}  // namespace baitwright
