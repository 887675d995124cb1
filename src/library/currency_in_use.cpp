#include "library/currency_in_use.h"

#include <algorithm>

#include "quantities/money.h"

namespace baitwright {

const Currency* most_used_currency(const Store& store) {
    const std::vector<CurrencyCount> counts = store.currencies_in_use();
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto& a, const auto& b) { return a.prices < b.prices; });
    return most == counts.end() ? nullptr : most->currency;
}

const Currency* currency_in_use(const Store& store) {
    const Usual usual = store.usual();
    const auto told = usual.find("currency");
    if (told == usual.end() || told->second.empty()) return most_used_currency(store);
    return &currency_named(told->second.front());
}

}  // namespace baitwright
