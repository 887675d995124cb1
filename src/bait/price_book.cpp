#include "bait/price_book.h"

#include <algorithm>
#include <cmath>

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

void keep_old(PriceBook& book, const Pack& pack) {
    const auto same = [&](const Pack& one) { return same_price(one, pack); };
    if (pack.price && std::none_of(book.old.begin(), book.old.end(), same)) book.old.push_back(pack);
}

/// Where it goes: the same offer, or a pack of that size of which nothing but the size is known.
std::vector<Pack>::iterator place_for(std::vector<Pack>& packs, const Pack& told) {
    const auto same = [&](const Pack& pack) { return same_offer(pack, told); };
    const auto known = std::find_if(packs.begin(), packs.end(), same);
    if (known != packs.end()) return known;
    return std::find_if(packs.begin(), packs.end(), [&](const Pack& pack) {
        return !pack.price && pack.shop.empty() && same_size(pack.size, told.size);
    });
}

}  // namespace

bool same_offer(const Pack& a, const Pack& b) {
    return same_size(a.size, b.size) && folded_name(a.shop) == folded_name(b.shop);
}

void enter_price(PriceBook& book, const Pack& told) {
    const auto known = place_for(book.packs, told);
    if (known == book.packs.end()) {
        book.packs.push_back(told);
    } else if (known->price && known->on > told.on) {
        keep_old(book, told);
    } else if (!same_price(*known, told)) {
        keep_old(book, *known);
        *known = told;
    }
}

bool tell_more(const std::vector<Pack>& others, const PriceBook& book) {
    return std::any_of(others.begin(), others.end(), [&](const Pack& pack) {
        const auto is_that = [&](const Pack& known) { return same_price(known, pack); };
        const auto is_no_older = [&](const Pack& known) {
            return known.price && same_offer(known, pack) && known.on >= pack.on;
        };
        return pack.price && std::none_of(book.old.begin(), book.old.end(), is_that) &&
               std::none_of(book.packs.begin(), book.packs.end(), is_no_older);
    });
}

bool is_stale(const Pack& pack, Date today) {
    return pack.on && year_after(*pack.on) < today;
}

}  // namespace baitwright
