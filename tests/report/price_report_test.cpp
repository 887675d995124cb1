#include "report/price_report.h"

#include <catch2/catch.hpp>

#include "day_of.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

PriceLine priced_line(const char* on, bool newest, bool stale, bool reckoned_by) {
    PriceLine line;
    line.name = "crumb";
    line.pack = Pack{1.0 * kilogram, Money(210, currency_named("GBP")), day_of(on), "bait barn"};
    line.newest = newest;
    line.stale = stale;
    line.reckoned_by = reckoned_by;
    return line;
}

}  // namespace

TEST_CASE("no cell of the prices begins or ends with a comma, whatever is known of the day") {
    for (const char* on : {"", "2026-03-01"})
        for (const int said : {0, 1, 2, 3, 4, 5, 6, 7}) {
            const PriceLine line = priced_line(on, (said & 1) != 0, (said & 2) != 0, (said & 4) != 0);
            const std::string text = price_list_told(price_list({line})).text();
            INFO(text);
            CHECK(text.find(" ,") == std::string::npos);
            CHECK(text.find(",\n") == std::string::npos);
            CHECK(text.find(", ,") == std::string::npos);
        }
    CHECK(price_list_told(price_list({priced_line("", true, false, true)})).text().find("bait barn  in use") !=
          std::string::npos);
}
