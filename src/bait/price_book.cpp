#include "bait/price_book.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "bait/one_currency.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

bool same_size(const std::variant<Mass, Volume>& a, const std::variant<Mass, Volume>& b) {
    if (a.index() != b.index()) return false;
    const auto si = [](auto amount) { return amount.si(); };
    const double size = std::visit(si, a);
    return std::abs(size - std::visit(si, b)) <= 1e-9 * size;  // 1 kg and 1000 g, whatever the rounding
}

bool same_price(const Pack& a, const Pack& b) {
    return same_offer(a, b) && a.price == b.price && a.on == b.on;
}

void refuse_other_currency(const PriceBook& book, const Pack& told) {
    std::vector<PricedIn> priced{{"told", &told.price->currency()}};
    for (const Pack& pack : book.packs)
        if (pack.price && !same_offer(pack, told)) priced.push_back({"other", &pack.price->currency()});
    const auto mixed = mixed_currencies(priced);
    if (!mixed) return;
    const std::string theirs(mixed->other.currency->code), its(told.price->currency().code);
    throw InputError(
        "mixed-currencies",
        fmt::format("{} is in {}, but its other packs are priced in {}", money_text(*told.price), its, theirs),
        fmt::format("price everything in one currency: {} and {} cannot be compared or added", its, theirs));
}

void keep_old(PriceBook& book, const Pack& pack) {
    const auto same = [&](const Pack& one) { return same_price(one, pack); };
    if (pack.price && std::none_of(book.old.begin(), book.old.end(), same)) book.old.push_back(pack);
}

}  // namespace

bool same_offer(const Pack& a, const Pack& b) {
    return same_size(a.size, b.size) && folded_name(a.shop) == folded_name(b.shop);
}

void enter_price(PriceBook& book, const Pack& told) {
    refuse_other_currency(book, told);
    const auto same = [&](const Pack& pack) { return same_offer(pack, told); };
    const auto known = std::find_if(book.packs.begin(), book.packs.end(), same);
    if (known == book.packs.end()) {
        book.packs.push_back(told);
    } else if (known->price && known->on > told.on) {
        keep_old(book, told);
    } else if (!same_price(*known, told)) {
        keep_old(book, *known);
        *known = told;
    }
}

bool is_stale(const Pack& pack, Date today) {
    return pack.on && year_after(*pack.on) < today;
}

}  // namespace baitwright
