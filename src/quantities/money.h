#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace baitwright {

/// An ISO 4217 currency: its code, the digits of its minor unit, and the sign it is written with, if any.
struct Currency {
    std::string_view code = "GBP";
    int minor_digits = 2;
    std::string_view sign = "\u00a3";
    friend bool operator==(const Currency& a, const Currency& b) { return a.code == b.code; }
};

/// The currency with that ISO 4217 code ("GBP") or sign; throws InputError "unknown-currency".
const Currency& currency_named(std::string_view code_or_sign);

/// An amount in whole minor units (pence) of one currency. Sums across currencies throw InputError "mixed-currencies".
class Money {
public:
    Money() = default;
    Money(std::int64_t minor, const Currency& currency) : minor_(minor), currency_(&currency) {}
    [[nodiscard]] std::int64_t minor() const { return minor_; }
    [[nodiscard]] const Currency& currency() const { return *currency_; }
    Money& operator+=(const Money& other);
    Money& operator-=(const Money& other);
    friend Money operator+(Money a, const Money& b) { return a += b; }
    friend Money operator-(Money a, const Money& b) { return a -= b; }
    friend bool operator==(const Money& a, const Money& b) {
        return a.minor_ == b.minor_ && *a.currency_ == *b.currency_;
    }

private:
    std::int64_t minor_ = 0;
    const Currency* currency_ = &currency_named("GBP");
};

/// Rounds to a whole number, halves to the even neighbour (ISO 80000-1, annex B, rule A).
std::int64_t round_half_even(double value);

/// Whole minor units for exact (fractional) ones, which sum to the rounded sum of the exact ones:
/// largest remainder, earlier first where equal.
std::vector<std::int64_t> round_to_sum(const std::vector<double>& exact_minor);

/// Reads "£3.40", "3.40 GBP", "GBP 3.40", "340p"; throws InputError.
Money parse_money(std::string_view text);

/// The same, for a person who may have said which currency is theirs: a bare "3.40" is of that one. Where it is null,
/// the fault says how to tell it once.
Money parse_money(std::string_view text, const Currency* bare);

/// Writes "£3.40"; a currency without a sign as "3.40 CHF".
std::string money_text(const Money& money);

}  // namespace baitwright
