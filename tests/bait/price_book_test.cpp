#include "bait/price_book.h"

#include <catch2/catch.hpp>

#include "day_of.h"
#include "quantities/fault.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

Pack pack(std::variant<Mass, Volume> size, const char* price, std::string on, std::string shop = {}) {
    return {size, parse_money(price), day_of(on), std::move(shop)};
}

std::vector<std::string> prices(const std::vector<Pack>& packs) {
    std::vector<std::string> texts;
    for (const Pack& one : packs) texts.push_back(money_text(*one.price) + " " + date_or_blank(one.on));
    return texts;
}

using Texts = std::vector<std::string>;

}  // namespace

TEST_CASE("a newer price goes in the place of the same size and shop's, which is kept") {
    PriceBook book{{pack(1.0 * kilogram, "£4.20", "2026-01-01", "the mill"),
                    pack(1.0 * kilogram, "£4.00", "2025-11-01", "the village shop"),
                    pack(5.0 * kilogram, "£16.00", "2026-01-01", "the mill")},
                   {}};
    enter_price(book, pack(1000.0 * gram, "£4.50", "2026-03-01", "The  Mill"));
    CHECK(prices(book.packs) == Texts{"£4.50 2026-03-01", "£4.00 2025-11-01", "£16.00 2026-01-01"});
    CHECK(prices(book.old) == Texts{"£4.20 2026-01-01"});
}

TEST_CASE("a price told late joins the old ones") {
    PriceBook book{{pack(1.0 * kilogram, "£4.20", "2026-01-01")}, {}};
    enter_price(book, pack(1.0 * kilogram, "£3.90", "2025-06-01"));
    CHECK(prices(book.packs) == Texts{"£4.20 2026-01-01"});
    CHECK(prices(book.old) == Texts{"£3.90 2025-06-01"});
}

TEST_CASE("of one day the price told last counts") {
    PriceBook book{{pack(1.0 * kilogram, "£4.20", "2026-01-01")}, {}};
    enter_price(book, pack(1.0 * kilogram, "£4.30", "2026-01-01"));
    CHECK(prices(book.packs) == Texts{"£4.30 2026-01-01"});
    CHECK(prices(book.old) == Texts{"£4.20 2026-01-01"});
}

TEST_CASE("a price without a date is older than any") {
    PriceBook book{{pack(1.0 * kilogram, "£4.20", "")}, {}};
    enter_price(book, pack(1.0 * kilogram, "£3.90", "1999-06-01"));
    CHECK(prices(book.packs) == Texts{"£3.90 1999-06-01"});
}

TEST_CASE("a price told twice stands once") {
    PriceBook book{{pack(1.0 * kilogram, "£4.20", "2026-01-01")}, {}};
    for (int i = 0; i < 2; ++i) enter_price(book, pack(1.0 * kilogram, "£4.20", "2026-01-01"));
    for (int i = 0; i < 2; ++i) enter_price(book, pack(1.0 * kilogram, "£3.90", "2025-01-01"));
    CHECK(book.packs.size() == 1);
    CHECK(book.old.size() == 1);
}

TEST_CASE("a pack that had no price gets one, and a new size or shop is a pack of its own") {
    PriceBook book{{{1.0 * kilogram, {}, {}, {}}}, {}};
    enter_price(book, pack(1.0 * kilogram, "£4.20", "2026-01-01"));
    enter_price(book, pack(1.0 * litre, "£4.20", "2026-01-01"));
    enter_price(book, pack(1.0 * kilogram, "£4.40", "2026-01-01", "the mill"));
    CHECK(book.packs.size() == 3);
    CHECK(book.old.empty());
}

TEST_CASE("a price in another currency than the other packs stands beside them") {
    PriceBook book{{pack(1.0 * kilogram, "£4.20", "2026-01-01"), pack(5.0 * kilogram, "£16.00", "2026-01-01")}, {}};
    enter_price(book, pack(5.0 * kilogram, "€18.00", "2026-03-01"));
    CHECK(prices(book.packs) == Texts{"£4.20 2026-01-01", "€18.00 2026-03-01"});
    CHECK(prices(book.old) == Texts{"£16.00 2026-01-01"});
}

TEST_CASE("a pack of which only the size is known takes the first price of that size, whatever the shop") {
    PriceBook book{{{1.0 * kilogram, {}, {}, {}}, {5.0 * kilogram, {}, {}, {}}}, {}};
    enter_price(book, pack(5.0 * kilogram, "€18.00", "2026-03-01", "the mill"));
    REQUIRE(book.packs.size() == 2);
    CHECK(book.packs[1].shop == "the mill");
    CHECK_FALSE(book.packs[0].price);
}

TEST_CASE("a price is stale when it is more than a year old") {
    const Pack dated = pack(1.0 * kilogram, "£4.20", "2025-11-25");
    CHECK_FALSE(is_stale(dated, parse_date("2026-11-25")));
    CHECK(is_stale(dated, parse_date("2026-11-26")));
    CHECK_FALSE(is_stale(pack(1.0 * kilogram, "£4.20", ""), parse_date("2026-11-26")));
}
