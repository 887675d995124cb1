#pragma once

#include <optional>
#include <string>
#include <vector>

#include "quantities/money.h"

/// Prices add up, and can be compared, in one currency alone: here it is decided whether they do.
namespace baitwright {

/// What something is priced in; null where it has no price.
struct PricedIn {
    std::string name;
    const Currency* currency = nullptr;
};

/// Two that do not add up.
struct MixedCurrencies {
    PricedIn one, other;
    [[nodiscard]] std::string message() const;
};

/// The first that is priced otherwise than the first of all, and that; or another price of its own, where it has two.
std::optional<MixedCurrencies> mixed_currencies(const std::vector<PricedIn>& priced);

/// The currency of all that have a price; null where none has. Throws InputError "mixed-currencies" naming two of them;
/// `hint` follows the name of the second: "price it for this once with ...".
const Currency* one_currency(const std::vector<PricedIn>& priced, const std::string& hint = {});

}  // namespace baitwright
