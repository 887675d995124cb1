#include <fmt/format.h>

#include <array>
#include <limits>
#include <optional>

#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/money.h"
#include "quantities/number_text.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

/// The amount as written, in digits: money never passes through a double, which cannot hold £0.10.
struct Amount {
    std::string_view whole;
    std::string_view fraction;
};

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

bool take_minus(std::string_view& rest) {
    if (rest.substr(0, 1) != "-") return false;
    rest.remove_prefix(1);
    return true;
}

[[noreturn]] void refuse(std::string_view whole, std::string_view what) {
    throw InputError("not-a-number", fmt::format("{} {}", in_quotes(whole), what), "as in £3.40, 3.40 EUR or 340p");
}

/// The currency whose sign or code stands in front: "£" or "GBP".
const Currency* take_currency(std::string_view& rest) {
    for (std::string_view sign : {"\u00a3", "\u20ac", "$"}) {
        if (rest.substr(0, sign.size()) != sign) continue;
        rest.remove_prefix(sign.size());
        return &currency_named(sign);
    }
    std::size_t letters = 0;
    while (letters < rest.size() && is_letter(rest[letters])) ++letters;
    if (letters == 0) return nullptr;
    const auto& currency = currency_named(rest.substr(0, letters));
    rest.remove_prefix(letters);
    return &currency;
}

Amount take_amount(std::string_view& rest, std::string_view whole) {
    Amount amount{take_digits(rest), {}};
    if (rest.size() > 1 && rest[0] == '.' && rest[1] >= '0' && rest[1] <= '9') {
        rest.remove_prefix(1);
        amount.fraction = take_digits(rest);
    }
    if (amount.whole.empty() && amount.fraction.empty()) refuse(whole, "is not an amount of money");
    if (rest.substr(0, 1) == ",") refuse(whole, "has a comma in its number");
    if (rest.substr(0, 1) == ".") refuse(whole, "has a point too many");
    return amount;
}

std::int64_t minor_units(const Amount& amount, int minor_digits, std::string_view whole) {
    std::string digits(amount.whole);
    digits += amount.fraction;
    digits.append(static_cast<std::size_t>(minor_digits) - amount.fraction.size(), '0');
    std::int64_t minor = 0;
    for (char digit : digits) {
        if (__builtin_mul_overflow(minor, std::int64_t{10}, &minor) ||
            __builtin_add_overflow(minor, std::int64_t{digit - '0'}, &minor)) {
            throw InputError("too-large", fmt::format("{} is more money than can be counted", in_quotes(whole)),
                             "write it as in \"£3.40\"");
        }
    }
    return minor;
}

/// What follows the amount: a currency where none stood in front, and no more.
const Currency* currency_behind(std::string_view rest, const Currency* in_front, std::string_view whole) {
    rest = trimmed(rest);
    if (in_front && !rest.empty()) refuse(whole, "has more than an amount and its currency");
    if (in_front) return in_front;
    const auto* behind = take_currency(rest);
    if (!behind || !rest.empty()) refuse(whole, "has more than an amount and its currency");
    return behind;
}

[[noreturn]] void refuse_bare(std::string_view whole, std::string_view way_out) {
    throw InputError("no-currency", fmt::format("{} has no currency", in_quotes(whole)),
                     fmt::format("as in £3.40, 3.40 EUR or 340p{}", way_out));
}

[[noreturn]] void refuse_digits(std::string_view whole, std::string_view unit, int minor_digits) {
    throw InputError(
        "too-many-digits",
        minor_digits == 0
            ? fmt::format("{} has digits after the point, but {} has none", in_quotes(whole), unit)
            : fmt::format("{} has too many digits after the point: {} has {}", in_quotes(whole), unit, minor_digits),
        minor_digits == 0 ? "leave out the point and what follows it" : "round it to that many digits");
}

Money money_of(const Amount& amount, const Currency& currency, int minor_digits, bool negative,
               std::string_view whole) {
    if (amount.fraction.size() > static_cast<std::size_t>(minor_digits)) {
        refuse_digits(whole, minor_digits == currency.minor_digits ? currency.code : "a penny", minor_digits);
    }
    const auto minor = minor_units(amount, minor_digits, whole);
    return {negative ? -minor : minor, currency};
}

/// An amount without a currency is of `bare`, or refused with a way out where that is null.
Money read_money(std::string_view text, const Currency* bare, std::string_view way_out) {
    const auto whole = trimmed(text);
    if (whole.empty()) throw InputError("not-a-number", "nothing is written", "as in £3.40, 3.40 EUR or 340p");
    auto rest = whole;
    bool negative = take_minus(rest);
    const auto* in_front = take_currency(rest);
    rest = trimmed(rest);
    if (in_front && !negative) negative = take_minus(rest);
    const auto amount = take_amount(rest, whole);
    if (!in_front && trimmed(rest) == "p") return money_of(amount, currency_named("GBP"), 0, negative, whole);
    if (!in_front && trimmed(rest).empty()) {
        if (!bare) refuse_bare(whole, way_out);
        if (bare->minor_digits == 0 && !amount.fraction.empty())
            refuse_digits(whole, fmt::format("your currency, {},", bare->code), 0);
        return money_of(amount, *bare, bare->minor_digits, negative, whole);
    }
    const auto* currency = currency_behind(rest, in_front, whole);
    return money_of(amount, *currency, currency->minor_digits, negative, whole);
}

}  // namespace

Money parse_money(std::string_view text) {
    return read_money(text, nullptr, "");
}

Money parse_money(std::string_view text, const Currency* bare) {
    return read_money(text, bare, worded("; or tell it once: baitwright usual --currency GBP", ""));
}

std::string money_text(const Money& money) {
    const auto& currency = money.currency();
    // As unsigned, since the least of 64 bits has no positive twin.
    const auto minor = static_cast<std::uint64_t>(money.minor());
    auto digits = fmt::format("{}", money.minor() < 0 ? 0 - minor : minor);
    const auto places = static_cast<std::size_t>(currency.minor_digits);
    if (digits.size() <= places) digits.insert(0, places + 1 - digits.size(), '0');
    if (places > 0) digits.insert(digits.size() - places, ".");
    const std::string_view minus = money.minor() < 0 ? "-" : "";
    return currency.sign.empty() ? fmt::format("{}{} {}", minus, digits, currency.code)
                                 : fmt::format("{}{}{}", minus, currency.sign, digits);
}

}  // namespace baitwright
