#include "answers/shared/stock_answer.h"

#include <catch2/catch.hpp>

#include "answers/money/price_answer.h"
#include "bait/draft_shelf.h"
#include "day_of.h"
#include "quantities/listed.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

const Date today = parse_date("2026-11-25");

Lot lot(const char* best, int refrozen = 0) {
    Lot made;
    made.left = {1000};
    made.refrozen = refrozen;
    if (*best != '\0') made.best_before = parse_date(best);
    return made;
}

StockReceipt receipt(Happening what, std::vector<StockReceipt::Line> lines) {
    return {1, what, today, {}, 0, std::move(lines)};
}

std::vector<std::string> codes(const std::vector<Warning>& warnings) {
    std::vector<std::string> all;
    for (const Warning& warning : warnings) all.push_back(warning.code);
    return all;
}

using Codes = std::vector<std::string>;

Ingredient crumb_with(std::vector<Pack> packs) {
    Ingredient crumb = draft::shelf().ingredient("brown crumb");
    crumb.packs = std::move(packs);
    return crumb;
}

}  // namespace

TEST_CASE("what lies past its best in the shed is named with its date, the rest is not") {
    const ShedAnswer answer = shed_answer({{"brown crumb", StockKind::ingredient, {}, {lot("2026-11-24"), lot("")}},
                                           {"maize meal", StockKind::ingredient, {}, {lot("2026-11-25")}},
                                           {"molasses", StockKind::ingredient, {}, {lot("")}}},
                                          0, today);
    REQUIRE(answer.warnings.size() == 1);
    CHECK(answer.warnings.front().message ==
          "past its best: brown crumb (best before 2026-11-24); smell it first, and bin it if it is sour or mouldy");
}

TEST_CASE("using what is past its best, or frozen twice, is warned of; throwing it out is not") {
    const std::vector<StockReceipt::Line> lines{{"silt bed", StockKind::mix, lot("2026-11-01", 1), {-1}, {}}};
    CHECK(codes(stock_warnings(receipt(Happening::used, lines))) == Codes{"past-best", "frozen-twice"});
    CHECK(codes(stock_warnings(receipt(Happening::booked, lines))) == Codes{"past-best", "frozen-twice"});
    CHECK(stock_warnings(receipt(Happening::wasted, lines)).empty());
    CHECK(stock_warnings(receipt(Happening::undone, lines)).empty());
    CHECK(
        stock_warnings(receipt(Happening::used, {{"silt bed", StockKind::mix, lot("2026-12-01"), {-1}, {}}})).empty());
}

TEST_CASE("a list of names reads as one says it") {
    CHECK(listed({}).empty());
    CHECK(listed({"a"}) == "a");
    CHECK(listed({"a", "b"}) == "a and b");
    CHECK(listed({"a", "b", "c"}) == "a, b and c");
}

TEST_CASE("prices by the kilo, the one in use, the old and the missing are told") {
    const Money two = parse_money("£2.10"), eight = parse_money("£7.90");
    const Ingredient crumb = crumb_with(
        {{5.0 * kilogram, eight, day_of("2024-01-01"), "the mill"}, {1.0 * kilogram, two, day_of("2026-03-01"), {}}});
    const Ingredient bare = crumb_with({});
    std::vector<PriceLine> lines = prices_now(crumb, today, nullptr);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].per_kg_minor.value() == Approx(158));
    CHECK(lines[0].stale);
    CHECK_FALSE(lines[0].reckoned_by);
    CHECK(lines[1].reckoned_by);
    CHECK(codes(price_list(lines).warnings) == Codes{"stale-price"});
    CHECK(codes(price_list(prices_now(bare, today, nullptr)).warnings) == Codes{"no-price"});
}

TEST_CASE("of prices in two currencies the one in use is in the currency that answers are in, if there is one") {
    const Ingredient crumb = crumb_with({{0.5 * kilogram, parse_money("€3.00"), day_of("2026-03-01"), {}},
                                         {1.0 * kilogram, parse_money("£2.10"), day_of("2026-03-01"), {}}});
    const auto in_use = [&](const Currency* in) {
        const std::vector<PriceLine> lines = prices_now(crumb, today, in);
        REQUIRE(lines[0].reckoned_by != lines[1].reckoned_by);
        return lines[0].reckoned_by ? "EUR" : "GBP";
    };
    CHECK(in_use(&currency_named("GBP")) == std::string("GBP"));
    CHECK(in_use(&currency_named("EUR")) == std::string("EUR"));
    CHECK(in_use(&currency_named("CHF")) == std::string("EUR"));
    CHECK(in_use(nullptr) == std::string("EUR"));
}

TEST_CASE("the prices of all time stand in the order of their days") {
    const Ingredient crumb = crumb_with({{1.0 * kilogram, parse_money("£2.10"), day_of("2026-03-01"), {}}});
    const std::vector<Pack> old{{1.0 * kilogram, parse_money("£2.00"), day_of("2025-03-01"), {}},
                                {1.0 * kilogram, parse_money("£1.80"), day_of("2024-03-01"), {}}};
    std::string order;
    for (const PriceLine& line : prices_ever(crumb, old, today, nullptr))
        order += date_text(*line.pack->on).substr(0, 4) + (line.newest ? "! " : " ");
    CHECK(order == "2024 2025 2026! ");
}
