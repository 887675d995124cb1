#include "report/convert_report.h"

#include <catch2/catch.hpp>

#include "quantities/units.h"

using namespace baitwright;

namespace {

PriceConversion one_converted() {
    PriceConversion conversion;
    conversion.asked.to = &currency_named("EUR");
    conversion.asked.rate = 1.17;
    conversion.asked.on = parse_date("2026-11-25");
    conversion.from = &currency_named("GBP");
    conversion.unchanged = 2;
    const Pack was{1.0 * kilogram, parse_money("£2.10"), parse_date("2026-03-01"), "the mill"};
    conversion.converted = {{"brown crumb", was, {was.size, parse_money("€2.46"), conversion.asked.on, "the mill"}}};
    return conversion;
}

}  // namespace

TEST_CASE("a rate is told in words, with the digits that it has and no fewer than its currency") {
    struct Row {
        const char* from;
        const char* to;
        double rate;
        const char* words;
    };
    const Row row = GENERATE(values<Row>({
        {"GBP", "EUR", 1.17, "£1.00 is €1.17"},
        {"GBP", "EUR", 1.2, "£1.00 is €1.20"},
        {"GBP", "EUR", 1.1725, "£1.00 is €1.1725"},
        {"GBP", "CHF", 1.1, "£1.00 is 1.10 CHF"},
        {"GBP", "JPY", 190, "£1.00 is 190 JPY"},
        {"JPY", "GBP", 0.0052, "1 JPY is £0.0052"},
    }));
    CHECK(rate_words(currency_named(row.from), currency_named(row.to), row.rate) == row.words);
}

TEST_CASE("a conversion tells how many prices, at what rate, and each before and now") {
    const std::string text = conversion_told(one_converted()).text();
    CHECK_THAT(text, Catch::Contains("1 price is in EUR now: £1.00 is €1.17. The old prices are kept.") &&
                         Catch::Contains("2 prices stay as they are.") && Catch::Contains("£2.10") &&
                         Catch::Contains("€2.46"));
    PriceConversion shown = one_converted();
    shown.asked.doing = ConvertRequest::Doing::only_shown;
    CHECK_THAT(conversion_told(shown).text(),
               Catch::Contains("would be in EUR") && Catch::Contains("Nothing was written."));
    CHECK(conversion_json(shown)["dry_run"].truth());
}

TEST_CASE("the record and the rows of a conversion hold both prices of each") {
    const Json json = conversion_json(one_converted());
    CHECK(json["to"] == "EUR");
    CHECK(json["unchanged"] == 2);
    REQUIRE(json["converted"].size() == 1);
    CHECK(json["converted"][0]["size"] == "1 kg");
    CHECK(json["converted"][0]["from_minor"] == 210);
    CHECK(json["converted"][0]["to_minor"] == 246);
    const Rows rows = conversion_rows(one_converted());
    REQUIRE(rows.size() == 2);
    CHECK(rows[1] == std::vector<std::string>{"brown crumb", "1 kg", "the mill", "210", "GBP", "246", "EUR"});
}
