#pragma once

#include <string>
#include <vector>

#include "quantities/money.h"

namespace baitwright {

/// What something is priced in; null where it has no price.
struct PricedIn {
    std::string name;
    const Currency* currency = nullptr;
};

/// The currency of all that have a price; null where none has. Throws InputError "mixed-currencies" naming two of them;
/// `hint` follows the name of the second: "price it for this once with ...".
const Currency* one_currency(const std::vector<PricedIn>& priced, const std::string& hint = {});

}  // namespace baitwright
