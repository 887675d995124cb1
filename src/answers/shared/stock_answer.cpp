#include "answers/shared/stock_answer.h"

#include <algorithm>

#include "bait/stock_rules.h"
#include "quantities/listed.h"

namespace baitwright {

namespace {

constexpr const char* smell_first = "; smell it first, and bin it if it is sour or mouldy";

Warning past_best_warning(const std::vector<std::string>& names) {
    return {"past-best", "past its best: " + listed(names) + smell_first};
}

bool comes_out(Happening what) {
    return what == Happening::used || what == Happening::booked;
}

std::string with_date(const std::string& name, const Lot& lot) {
    return name + " (best before " + date_text(*lot.best_before) + ")";
}

}  // namespace

std::vector<Warning> past_best(const std::vector<StockItem>& items, Date today) {
    std::vector<std::string> names;
    for (const StockItem& item : items) {
        const auto past =
            std::find_if(item.lots.begin(), item.lots.end(), [&](const Lot& lot) { return is_past(lot, today); });
        if (past != item.lots.end()) names.push_back(with_date(item.name, *past));
    }
    if (names.empty()) return {};
    return {past_best_warning(names)};
}

std::vector<Warning> stock_warnings(const StockReceipt& receipt) {
    std::vector<Warning> warnings;
    if (!comes_out(receipt.what)) return warnings;
    std::vector<std::string> past, frozen_twice;
    for (const StockReceipt::Line& line : receipt.lines) {
        if (is_past(line.lot, receipt.on)) past.push_back(with_date(line.name, line.lot));
        if (line.lot.refrozen >= most_refrozen) frozen_twice.push_back(line.name);
    }
    if (!past.empty()) warnings.push_back(past_best_warning(past));
    if (!frozen_twice.empty())
        warnings.push_back({"frozen-twice", "frozen twice already: " + listed(frozen_twice) +
                                                "; use it up today, and bin what is left"});
    return warnings;
}

ShedAnswer shed_answer(std::vector<StockItem> items, std::size_t not_shown, Date today) {
    std::vector<Warning> warnings = past_best(items, today);
    return {today, std::move(items), not_shown, std::move(warnings)};
}

StockChangeAnswer stock_change_answer(StockReceipt receipt) {
    std::vector<Warning> warnings = stock_warnings(receipt);
    return {std::move(receipt), std::move(warnings)};
}

}  // namespace baitwright
