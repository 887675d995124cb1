#include <fmt/format.h>

#include <array>
#include <string>
#include <vector>

#include "quantities/currency_codes.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/money.h"
#include "quantities/number_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// Code and digits of the minor unit: **Source**: ISO 4217, list one, as mirrored by the public data set
/// "currency-codes" (read; `tests/reference/currencies.csv`). A sign that several currencies share means the first.
constexpr std::array currencies{
    Currency{"GBP", 2, "\u00a3"}, Currency{"EUR", 2, "\u20ac"}, Currency{"USD", 2, "$"}, Currency{"AUD", 2, ""},
    Currency{"BGN", 2, ""},       Currency{"CAD", 2, ""},       Currency{"CHF", 2, ""},  Currency{"CZK", 2, ""},
    Currency{"DKK", 2, ""},       Currency{"HUF", 2, ""},       Currency{"ISK", 0, ""},  Currency{"JPY", 0, ""},
    Currency{"KWD", 3, ""},       Currency{"NOK", 2, ""},       Currency{"NZD", 2, ""},  Currency{"PLN", 2, ""},
    Currency{"RON", 2, ""},       Currency{"SEK", 2, ""},       Currency{"ZAR", 2, ""},
};

[[noreturn]] void refuse_currency(std::string_view name) {
    const auto nearest = did_you_mean(name, currency_codes());
    throw InputError("unknown-currency", fmt::format("{} is not a currency known here", in_quotes(name)),
                     nearest.empty() ? "write a sign or an ISO 4217 code, as in £3.40 or 3.40 EUR" : nearest);
}

}  // namespace

std::vector<std::string> currency_codes() {
    std::vector<std::string> codes;
    codes.reserve(currencies.size());
    for (const auto& currency : currencies) codes.emplace_back(currency.code);
    return codes;
}

const Currency& currency_named(std::string_view code_or_sign) {
    const auto name = folded_name(trimmed(code_or_sign));
    for (const auto& currency : currencies) {
        if (name == folded_name(currency.code)) return currency;
        if (!name.empty() && name == currency.sign) return currency;
    }
    refuse_currency(code_or_sign);
}

}  // namespace baitwright
