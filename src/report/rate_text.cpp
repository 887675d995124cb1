#include "report/rate_text.h"

#include <fmt/format.h>

#include <cmath>

#include "report/display.h"

namespace baitwright {

std::string shown_rate(double minor, const Currency& currency) {
    const double per_major = std::pow(10, currency.minor_digits);
    if (currency.code == "GBP" && std::abs(minor) < 99.5)
        return significant(minor, std::abs(minor) < 9.95 ? 2 : 3) + "p";
    if (std::abs(minor) >= 99.5) return money_text(Money(round_half_even(minor), currency));
    const std::string number = significant(minor / per_major, 2);
    return currency.sign.empty() ? fmt::format("{} {}", number, currency.code)
                                 : fmt::format("{}{}", currency.sign, number);
}

}  // namespace baitwright
