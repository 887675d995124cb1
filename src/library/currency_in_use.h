#pragma once

#include "store/store.h"

namespace baitwright {

/// The currency that most prices in use are in; null where nothing is priced.
const Currency* most_used_currency(const Store& store);

/// The one that answers over all of the store are in: what the person always uses, else the most used.
const Currency* currency_in_use(const Store& store);

}  // namespace baitwright
