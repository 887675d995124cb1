#include "report/convert_report.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "quantities/number_text.h"
#include "report/display.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

bool only_shown(const PriceConversion& conversion) {
    return conversion.asked.doing == ConvertRequest::Doing::only_shown;
}

std::string prices_text(std::size_t prices) {
    return prices == 1 ? "1 price" : fmt::format("{} prices", prices);
}

std::string taken_out_text(const PriceConversion& conversion) {
    if (conversion.taken_out == 0) return "No price is in use, so nothing is changed.";
    const std::string prices = prices_text(conversion.taken_out);
    if (only_shown(conversion)) return prices + " would be taken out of use. Nothing was written.";
    return prices + (conversion.taken_out == 1 ? " is" : " are") +
           " out of use now. The packs stay, and the old prices are kept.";
}

std::string converted_text(const PriceConversion& conversion) {
    const std::string to(conversion.asked.to->code);
    if (conversion.converted.empty())
        return conversion.from ? "No price is in " + std::string(conversion.from->code) + ", so nothing is changed."
                               : "No price is in another currency than " + to + ", so nothing is changed.";
    const std::string prices = prices_text(conversion.converted.size()),
                      rate = rate_words(*conversion.from, *conversion.asked.to, conversion.asked.rate);
    if (only_shown(conversion)) return prices + " would be in " + to + ": " + rate + ". Nothing was written.";
    return prices + (conversion.converted.size() == 1 ? " is in " : " are in ") + to + " now: " + rate +
           ". The old prices are kept.";
}

TextTable conversion_table(const PriceConversion& conversion) {
    TextTable table({Align::left, Align::right, Align::right, Align::right, Align::left});
    table.row({"ingredient", "pack", "before", "now", "shop"});
    for (const PriceConverted& each : conversion.converted)
        table.row(
            {each.name, shown_pack(each.is), money_text(*each.was.price), money_text(*each.is.price), each.is.shop});
    return table;
}

}  // namespace

std::string rate_words(const Currency& from, const Currency& to, double rate) {
    const auto unit = static_cast<std::int64_t>(std::round(std::pow(10.0, from.minor_digits)));
    const double minor = rate * std::pow(10.0, to.minor_digits);
    const bool whole = std::abs(minor - std::round(minor)) <= 1e-9 * minor;
    const std::string number = whole ? fmt::format("{:.{}f}", rate, to.minor_digits) : number_text(rate);
    return money_text(Money(unit, from)) + " is " +
           (to.sign.empty() ? number + " " + std::string(to.code) : std::string(to.sign) + number);
}

Told conversion_told(const PriceConversion& conversion) {
    Told told;
    told.say(conversion.asked.to ? converted_text(conversion) : taken_out_text(conversion));
    if (conversion.unchanged > 0 && !conversion.converted.empty())
        told.say(prices_text(conversion.unchanged) +
                 (conversion.unchanged == 1 ? " stays as it is." : " stay as they are."));
    if (conversion.converted.empty()) return told;
    told.gap();
    told.table(conversion_table(conversion));
    return told;
}

Json conversion_json(const PriceConversion& conversion) {
    const Currency* to = conversion.asked.to;
    Json json = json_record("price convert", {});
    json["from"] = conversion.from ? Json(conversion.from->code) : Json();
    json["to"] = to ? Json(to->code) : Json();
    json["rate"] = to ? Json(conversion.asked.rate) : Json();
    json["on"] = date_text(conversion.asked.on);
    json["dry_run"] = only_shown(conversion);
    json["converted"] = Json::array();
    for (const PriceConverted& each : conversion.converted)
        json["converted"].push_back({{"name", each.name},
                                     {"size", shown_pack(each.is)},
                                     {"shop", text_or_null(each.is.shop)},
                                     {"from_minor", each.was.price->minor()},
                                     {"from_currency", each.was.price->currency().code},
                                     {"to_minor", each.is.price->minor()},
                                     {"to_currency", each.is.price->currency().code}});
    json["unchanged"] = conversion.unchanged;
    json["taken_out"] = conversion.taken_out;
    return json;
}

Rows conversion_rows(const PriceConversion& conversion) {
    Rows rows{{"name", "size", "shop", "from_minor", "from_currency", "to_minor", "to_currency"}};
    for (const PriceConverted& each : conversion.converted)
        rows.push_back({each.name, shown_pack(each.is), each.is.shop, std::to_string(each.was.price->minor()),
                        std::string(each.was.price->currency().code), std::to_string(each.is.price->minor()),
                        std::string(each.is.price->currency().code)});
    return rows;
}

}  // namespace baitwright
