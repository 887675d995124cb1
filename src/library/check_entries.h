#pragma once

#include "answers/shared/store_health.h"
#include "store/store.h"

namespace baitwright {

/// Reads every entry of the library as an answer would, and adds what is wrong: a number outside its range, a name that
/// nothing has.
void check_entries(const Store& store, StoreFindings& findings);

/// Mends what entries refer to: a name that was given up is followed to its new one, and what was removed is put back
/// as it was last. What cannot be mended stays as it is.
void mend_references(Store& store, Date today);

}  // namespace baitwright
