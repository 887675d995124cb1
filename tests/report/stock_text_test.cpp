#include "report/stock_text.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <map>

#include "quantities/units.h"
#include "report/display.h"
#include "report/stock_json.h"

using namespace baitwright;

namespace {

const Date today = parse_date("2026-11-25");

std::int64_t some(int low, int high) {
    return *rc::gen::inRange(low, high + 1);
}

Lot any_lot(std::int64_t id) {
    Lot lot;
    lot.id = id;
    lot.got_on = today - std::chrono::days{some(0, 300)};
    if (some(0, 1) == 1) lot.best_before = today + std::chrono::days{some(-100, 300)};
    lot.left = {1000 * some(0, 5000)};
    return lot;
}

/// An entry of one thing or, for sessions and what takes entries back, of many; each of one or more lots, the lots of
/// different things in any order, for nothing promises that they stand together.
StockReceipt any_receipt() {
    StockReceipt receipt;
    receipt.entry = some(1, 99);
    receipt.what = static_cast<Happening>(some(0, static_cast<int>(happening_names.size()) - 1));
    receipt.on = today;
    const bool many = receipt.what == Happening::booked || receipt.what == Happening::undone;
    if (receipt.what == Happening::booked) receipt.session = "far bank";
    if (receipt.what == Happening::undone) receipt.undoes = 7;
    const bool comes = receipt.what == Happening::bought || receipt.what == Happening::kept;
    const bool goes = receipt.what == Happening::used || receipt.what == Happening::wasted || many;
    const char* const names[]{"crumb", "meal", "hemp", "silt bed"};
    for (int thing = 0; thing < (many ? static_cast<int>(some(1, 4)) : 1); ++thing) {
        const Milligrams left{1000 * some(0, 9000)};
        const StockKind kind = thing == 3 ? StockKind::mix : StockKind::ingredient;
        const std::int64_t sign = comes ? 1 : goes && receipt.what != Happening::undone ? -1 : 2 * some(0, 1) - 1;
        for (std::int64_t lots = comes ? 1 : some(1, 3); lots > 0; --lots) {
            const std::int64_t by = 1000 * some(1, 3000);
            const Lot lot = any_lot(10 * thing + lots);
            const auto place = receipt.lines.begin() + some(0, static_cast<int>(receipt.lines.size()));
            receipt.lines.insert(place, {names[thing], kind, lot, {sign * by}, left});
        }
    }
    return receipt;
}

std::string grams_shown(double grams) {
    return shown_mass(std::abs(grams) * gram);
}

/// The lines of a text; what a paragraph broke is put together again.
std::vector<std::string> whole_lines(const std::string& text) {
    std::vector<std::string> lines;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = text.find('\n', begin);
        const std::string line = text.substr(begin, end - begin);
        const std::size_t margin = line.find_first_not_of(' ');
        if (margin != std::string::npos && margin > 5 && !lines.empty())
            lines.back() += " " + line.substr(margin);
        else
            lines.push_back(line);
        begin = end + 1;
    }
    return lines;
}

std::string line_of(const std::string& text, const std::string& start) {
    std::string found;
    for (const std::string& line : whole_lines(text)) {
        const std::string plain = line.substr(std::min(line.find_first_not_of(' '), line.size()));
        if (plain.rfind(start, 0) == 0) found += plain;
    }
    return found;
}

bool says(const std::string& line, const std::string& words) {
    return line.find(words) != std::string::npos;
}

struct OfOneThing {
    double change = 0, left = 0;
    int lots = 0;
};

std::map<std::string, OfOneThing> sums_in(const Json& receipt) {
    std::map<std::string, OfOneThing> sums;
    for (const Json& lot : receipt.at("lots")) {
        OfOneThing& one = sums[lot.at("name").text()];
        one.change += lot.at("change_g").number();
        one.left = lot.at("left_in_all_g").number();
        ++one.lots;
    }
    return sums;
}

}  // namespace

TEST_CASE("what an entry is told to have done to a thing is what its JSON sums to for that thing") {
    CHECK(rc::check([] {
        const StockReceipt receipt = any_receipt();
        const std::string text = stock_change_told({receipt, {}}).text();
        for (const auto& [name, sum] : sums_in(receipt_json(receipt))) {
            const std::string line = line_of(text, name + ": ");
            RC_LOG() << text << name << " " << sum.change << " g, " << sum.left << " g left\n";
            RC_ASSERT(!line.empty());
            if (receipt.what == Happening::counted) {
                RC_ASSERT(says(line, sum.left == 0 ? "none there" : grams_shown(sum.left) + " there"));
                RC_ASSERT(sum.change == sum.left || says(line, grams_shown(sum.change) + " "));
                continue;
            }
            RC_ASSERT(says(line, ": " + grams_shown(sum.change) + " "));
            const bool came = receipt.what == Happening::bought || receipt.what == Happening::kept;
            if (!came || sum.left > sum.change)
                RC_ASSERT(says(line, "; " + (sum.left == 0 ? std::string("none") : grams_shown(sum.left)) + " "));
        }
    }));
}

TEST_CASE("a lot is told under its own thing, each once") {
    CHECK(rc::check([] {
        StockReceipt receipt = any_receipt();
        receipt.what = Happening::booked;
        receipt.session = "far bank";
        for (StockReceipt::Line& line : receipt.lines) line.by = {-std::abs(line.by.count)};
        const std::string text = stock_change_told({receipt, {}}).text();
        RC_ASSERT(text.rfind("out of the shed for far bank (entry ", 0) == 0);
        std::string thing;
        std::map<std::string, int> lots;
        for (const std::string& line : whole_lines(text)) {
            if (line.rfind("    ", 0) == 0) ++lots[thing];
            if (line.rfind("    ", 0) != 0) thing = line.substr(2, line.find(':') - 2);
        }
        for (const auto& [name, sum] : sums_in(receipt_json(receipt)))
            RC_ASSERT(lots[name] == (sum.lots > 1 ? sum.lots : 0));
    }));
}

TEST_CASE("what the shed and its history tell in all is what their JSON says") {
    CHECK(rc::check([] {
        StockItem item{"crumb", StockKind::ingredient, {}, {}};
        for (std::int64_t id = some(1, 4); id > 0; --id) {
            item.lots.push_back(any_lot(id));
            item.left += item.lots.back().left;
        }
        const ShedAnswer shed = shed_answer({item}, 0, today);
        const double left = shed_json(shed).at("items")[0].at("left_g").number();
        RC_ASSERT(
            says(line_of(shed_told(shed).text(), item.lots.size() > 1 ? "crumb, in all" : "crumb"), grams_shown(left)));

        StockHistory history{"crumb", {}};
        for (std::int64_t id = 1; id <= some(1, 5); ++id) {
            StockEntry entry;
            entry.id = id;
            entry.on = today;
            for (int lots = static_cast<int>(some(1, 3)); lots > 0; --lots)
                entry.changes.push_back({lots, {1000 * some(1, 900)}});
            history.entries.push_back(entry);
        }
        const std::string text = stock_history_told(history).text();
        const Json told = stock_history_json(history);
        for (const Json& entry : told.at("entries")) {
            const std::string line = line_of(text, std::to_string(static_cast<int>(entry.at("entry").number())) + " ");
            RC_ASSERT(says(line, "+" + grams_shown(entry.at("change_g").number())));
            RC_ASSERT(says(line, " " + grams_shown(entry.at("left_g").number())));
        }
    }));
}
