#include "answers/money/one_currency.h"

#include "quantities/fault.h"

namespace baitwright {

const Currency* one_currency(const std::vector<PricedIn>& priced, const std::string& hint) {
    const PricedIn* first = nullptr;
    for (const PricedIn& item : priced) {
        if (!item.currency) continue;
        if (first && !(*item.currency == *first->currency))
            throw InputError("mixed-currencies",
                             "'" + first->name + "' is priced in " + std::string(first->currency->code) + " and '" +
                                 item.name + "' in " + std::string(item.currency->code) + ", and the two do not add up",
                             "price everything in one currency" +
                                 (hint.empty() ? "" : "; for this once with --price \"" + item.name + hint + "\""));
        if (!first) first = &item;
    }
    return first ? first->currency : nullptr;
}

}  // namespace baitwright
