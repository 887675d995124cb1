#include "files/noted_stock.h"

#include <array>

#include "files/value_reader.h"
#include "quantities/amount_range.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

constexpr std::size_t longest_mark = 40;

struct StockWord {
    const char* word;
    Happening what;
};
constexpr std::array<StockWord, 4> stock_words{{{"buy", Happening::bought},
                                                {"use", Happening::used},
                                                {"waste", Happening::wasted},
                                                {"count", Happening::counted}}};

Happening read_happening(TableReader& table) {
    std::vector<std::string> words;
    words.reserve(stock_words.size());
    for (const StockWord& one : stock_words) words.emplace_back(one.word);
    if (!table.required("what", "\"use\"")) return Happening::used;
    const auto said = table.word("what", words);
    for (const StockWord& one : stock_words)
        if (said && *said == one.word) return one.what;
    return Happening::used;
}

std::string read_mark(TableReader& table) {
    std::string mark = table.text("id").value_or(std::string());
    if (mark.size() > longest_mark)
        table.faults().add(table.place_of_value("id"), "out-of-range", "'id' is longer than 40 letters",
                           "it is the phone's own mark; leave it as it was written, or leave it out");
    return mark;
}

void refuse_unbought(TableReader& table, Happening what) {
    for (const char* key : {"price", "shop"})
        if (table.has(key) && what != Happening::bought)
            table.faults().add(table.place_of_key(key), "unfit-key", in_quotes(key) + " goes with what was bought",
                               "leave it out");
}

}  // namespace

NotedStock read_noted_stock(TableReader& table) {
    NotedStock noted;
    noted.mark = read_mark(table);
    noted.what = read_happening(table);
    if (table.required("of", "\"brown crumb\"")) noted.of = table.other_name("of");
    if (table.required("amount", "\"400 g\"")) noted.amount = table.text("amount").value_or(std::string());
    noted.named_at = table.place_of_value("of");
    noted.said_at = table.place_of_value("amount");
    noted.price = parsed(table, "price", "£2.10", [](std::string_view text) { return in_range(parse_money(text)); });
    noted.shop = table.other_name("shop");
    refuse_unbought(table, noted.what);
    return noted;
}

}  // namespace baitwright
