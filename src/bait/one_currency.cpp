#include "bait/one_currency.h"

#include <algorithm>

#include "quantities/fault.h"
#include "quantities/in_quotes.h"

namespace baitwright {

std::string MixedCurrencies::message() const {
    const std::string first(one.currency->code), second(other.currency->code);
    if (one.name == other.name) return in_quotes(one.name) + " is priced both in " + first + " and in " + second;
    return in_quotes(one.name) + " is priced in " + first + " and " + in_quotes(other.name) + " in " + second +
           ", and the two do not add up";
}

std::optional<MixedCurrencies> mixed_currencies(const std::vector<PricedIn>& priced) {
    const PricedIn* first = nullptr;
    for (const PricedIn& item : priced) {
        if (!item.currency) continue;
        if (!first) first = &item;
        if (*item.currency == *first->currency) continue;
        const auto its_own = std::find_if(priced.begin(), priced.end(), [&](const PricedIn& other) {
            return other.name == item.name && other.currency && !(*other.currency == *item.currency);
        });
        return MixedCurrencies{its_own == priced.end() ? *first : *its_own, item};
    }
    return std::nullopt;
}

const Currency* one_currency(const std::vector<PricedIn>& priced, const std::string& hint) {
    if (const auto mixed = mixed_currencies(priced)) {
        const bool for_this_once = !hint.empty() && mixed->one.name != mixed->other.name;
        throw InputError(
            "mixed-currencies", mixed->message(),
            "price everything in one currency" +
                (for_this_once ? "; for this once with --price \"" + mixed->other.name + hint + "\"" : ""));
    }
    const auto first =
        std::find_if(priced.begin(), priced.end(), [](const PricedIn& item) { return item.currency != nullptr; });
    return first == priced.end() ? nullptr : first->currency;
}

}  // namespace baitwright
