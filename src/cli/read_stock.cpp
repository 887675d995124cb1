#include "cli/read_stock.h"

#include <algorithm>

#include "quantities/in_quotes.h"
#include "quantities/plain_words.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"
#include "questions/read_flags.h"

namespace baitwright {

Store store_of(const Surroundings& around) {
    if (around.library.folder)
        throw UsageError("unfit-flag", "--library reads a folder, and the shed and its prices are in the store",
                         "leave it out");
    return open_store(around.library);
}

Date day_of(const Arguments& arguments, const Surroundings& around) {
    const Date today = around.today;
    const auto text = arguments.value("--on");
    if (!text) return today;
    const Date date = flag_value("--on", [&] { return parse_date(*text); });
    if (date > today)
        throw UsageError("in-the-future",
                         "--on: " + date_text(date) + " has not come yet; today is " + date_text(today),
                         "enter what has happened, not what is planned");
    return date;
}

std::optional<Date> best_before_of(const Arguments& arguments, Date got_on) {
    const auto text = arguments.value("--best-before");
    if (!text) return std::nullopt;
    const Date date = flag_value("--best-before", [&] { return parse_date(*text); });
    if (date < got_on)
        throw UsageError("unfit-dates",
                         "--best-before: " + date_text(date) + " lies before the day it came, " + date_text(got_on),
                         "read the bag again, or say with --on when it came");
    return date;
}

std::optional<StockState> state_of(const Arguments& arguments) {
    if (arguments.has("--cold") && arguments.has("--frozen"))
        throw UsageError("two-states", "--cold and --frozen were both given", "give one of them");
    if (arguments.has("--cold")) return StockState::cold;
    if (arguments.has("--frozen")) return StockState::frozen;
    return std::nullopt;
}

std::string shop_of(const Arguments& arguments, const Store& store) {
    const auto named = arguments.value("--shop");
    if (!named) {
        if (arguments.has("--new-shop"))
            throw UsageError("no-shop", "--new-shop needs --shop", "for example --shop \"the mill\" --new-shop");
        return {};
    }
    if (const std::string why = refused_as_name(*named); !why.empty())
        throw UsageError("bad-name", "--shop: the name " + in_quotes(*named) + " " + why,
                         "a shop's name is a few plain words, as in --shop \"the mill\"");
    if (const auto known = store.find_shop(*named)) return *known;
    if (arguments.has("--new-shop")) return *named;
    const std::vector<std::string> shops = store.shops();
    const auto alike =
        std::find_if(shops.begin(), shops.end(), [&](const auto& shop) { return said_alike(*named, shop); });
    if (alike != shops.end()) return *alike;  // no mere beginning: the price of a new shop would go to another
    const std::string nearest = near_names_hint(*named, shops);
    throw UsageError("unknown-shop", "--shop: no price is known from " + in_quotes(*named),
                     (nearest.empty() ? "" : nearest + " ") + "add --new-shop if it is a new one");
}

}  // namespace baitwright
