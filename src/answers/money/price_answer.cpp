#include "answers/money/price_answer.h"

#include <algorithm>

#include "answers/shared/stock_answer.h"
#include "bait/price_book.h"
#include "bait/pricing.h"
#include "quantities/listed.h"
#include "quantities/sort_stably.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

PriceLine line_of(const Ingredient& ingredient, const Pack& pack, Date today) {
    PriceLine line;
    line.name = ingredient.name;
    line.pack = pack;
    if (!pack.price) return line;
    line.stale = is_stale(pack, today);
    line.per_kg_minor = static_cast<double>(pack.price->minor()) / mass_in(pack, ingredient).in(kilogram);
    return line;
}

void add_once(std::vector<std::string>& names, const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

}  // namespace

std::vector<PriceLine> prices_now(const Ingredient& ingredient, Date today, const Currency* in) {
    std::vector<PriceLine> lines;
    const Pack* reckoned_by = pricing_pack(ingredient, in);
    if (!reckoned_by) reckoned_by = pricing_pack(ingredient);
    for (const Pack& pack : ingredient.packs) {
        lines.push_back(line_of(ingredient, pack, today));
        lines.back().reckoned_by = &pack == reckoned_by;
    }
    if (lines.empty()) {
        lines.emplace_back();
        lines.back().name = ingredient.name;
    }
    return lines;
}

std::vector<PriceLine> prices_ever(const Ingredient& ingredient, const std::vector<Pack>& old, Date today,
                                   const Currency* in) {
    std::vector<PriceLine> lines;
    for (const Pack& pack : old) {
        lines.push_back(line_of(ingredient, pack, today));
        lines.back().newest = false;
    }
    for (PriceLine& line : prices_now(ingredient, today, in)) lines.push_back(std::move(line));
    const auto day_of = [](const PriceLine& line) { return line.pack ? line.pack->on : std::nullopt; };
    sort_stably(lines.begin(), lines.end(),
                [&](const PriceLine& a, const PriceLine& b) { return day_of(a) < day_of(b); });
    return lines;
}

PriceList price_list(std::vector<PriceLine> lines) {
    std::vector<std::string> priced, all, missing, stale;
    for (const PriceLine& line : lines) {
        add_once(all, line.name);
        if (line.pack && line.pack->price) add_once(priced, line.name);
        if (line.stale && line.newest) add_once(stale, line.name + " (" + date_or_blank(line.pack->on) + ")");
    }
    for (const std::string& name : all)
        if (std::find(priced.begin(), priced.end(), name) == priced.end()) missing.push_back(name);
    PriceList list{std::move(lines), {}};
    if (!missing.empty()) list.warnings.push_back({"no-price", "no price is known for " + listed(missing)});
    if (!stale.empty()) list.warnings.push_back({"stale-price", "over a year old: " + listed(stale)});
    return list;
}

PriceChange price_change(const Ingredient& before, const Pack& told) {
    PriceChange change{before.name, told, std::nullopt, true, {}};
    const auto known = std::find_if(before.packs.begin(), before.packs.end(),
                                    [&](const Pack& pack) { return same_offer(pack, told); });
    if (known != before.packs.end() && known->price) change.before = *known;
    change.in_use = !change.before || change.before->on <= told.on;
    return change;
}

}  // namespace baitwright
