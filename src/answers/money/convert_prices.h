#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "answers/money/convert_request.h"
#include "bait/price_book.h"

namespace baitwright {

/// A price and what it became.
struct PriceConverted {
    std::string name;
    Pack was, is;
};

/// What became of all prices of a library.
struct PriceConversion {
    ConvertRequest asked;
    const Currency* from = nullptr;  ///< null where nothing is in another currency
    std::vector<PriceConverted> converted;
    std::size_t unchanged = 0;        ///< prices in use that stay as they are
    std::size_t taken_out = 0;        ///< prices that are no longer in use
    std::vector<NamedPacks> changed;  ///< all packs of those of which any changes, as they then are
};

/// So much money in the other currency, where a unit of its own buys `rate` of that one: half to even on minor units.
/// **Valid for**: a product below 9e18 minor units; beyond it throws InputError "too-large".
Money converted(const Money& money, double rate, const Currency& to);

/// What a conversion does, or taking all prices out of use. Throws UsageError "several-currencies" where it is not
/// clear what is converted, and InputError "unfit-price" naming every price that would become nothing, or more than
/// any price can be.
PriceConversion convert_prices(const std::vector<NamedPacks>& library, const ConvertRequest& request);

}  // namespace baitwright
