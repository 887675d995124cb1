#include "cli/commands.h"

#include "cli/read_stock.h"
#include "cli/result_formats.h"
#include "library/change_shed.h"
#include "questions/convert_question.h"
#include "report/convert_report.h"

namespace baitwright {

namespace {

CommandResult run_convert(const Arguments& arguments, const Surroundings& around) {
    ConvertRequest request = convert_request(arguments);
    request.on = day_of(arguments, around);
    Store store = store_of(around);
    return given(arguments,
                 reply_of(convert_prices(store, request), conversion_told, conversion_json, conversion_rows));
}

}  // namespace

CommandSpec command_price_convert() {
    return {"price convert",
            "all prices into another currency at once; the old ones are kept",
            {},
            {{"--to", "CURRENCY", "the currency they are to be in: EUR"},
             {"--at", "RATE", "how many of it one unit of the old currency buys: 1.17"},
             {"--from", "CURRENCY", "only prices in this one: GBP"},
             {"--without-prices", "", "take all prices out of use instead; the packs stay"},
             {"--on", "DATE", "the day of the new prices: 2026-03-01 (default: today)"},
             {"--dry-run", "", "show what it would do, and do nothing"},
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            run_convert,
            "baitwright price convert --to EUR --at 1.17\nbaitwright price convert --without-prices --dry-run",
            Effect::stores};
}

}  // namespace baitwright
