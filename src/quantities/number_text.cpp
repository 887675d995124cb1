#include "quantities/number_text.h"

#include <fmt/format.h>

#include <array>
#include <clocale>
#include <cmath>
#include <cstdlib>
#include <limits>
#include <stdexcept>

#include "quantities/fault.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

/// No quantity of a bait comes near it, and factors of units up to 1e8 still multiply it without overflow.
constexpr double largest_number = 1e300;

struct Glyph {
    std::string_view text;
    double value;
};
constexpr std::array<Glyph, 9> fraction_glyphs{{{"½", 0.5},
                                                {"¼", 0.25},
                                                {"¾", 0.75},
                                                {"⅓", 1.0 / 3},
                                                {"⅔", 2.0 / 3},
                                                {"⅛", 0.125},
                                                {"⅜", 0.375},
                                                {"⅝", 0.625},
                                                {"⅞", 0.875}}};
constexpr std::array<std::string_view, 7> blanks{" ", "\t", "\n", "\r", "\u00a0", "\u2009", "\u202f"};

bool take_prefix(std::string_view& rest, std::string_view prefix) {
    if (rest.substr(0, prefix.size()) != prefix) return false;
    rest.remove_prefix(prefix.size());
    return true;
}

bool take_blank(std::string_view& rest) {
    for (auto blank : blanks) {
        if (take_prefix(rest, blank)) return true;
    }
    return false;
}

bool drop_blank_at_end(std::string_view& text) {
    for (auto blank : blanks) {
        if (text.size() >= blank.size() && text.substr(text.size() - blank.size()) == blank) {
            text.remove_suffix(blank.size());
            return true;
        }
    }
    return false;
}

/// The one way from digits to double. `strtod` reads the decimal point of the C locale, which a library we load may
/// have changed, so that point is put in; libc++ 13 has no `from_chars` for double.
double decimal_value(std::string_view digits) {
    std::string text(digits);
    if (const auto point = text.find('.'); point != std::string::npos) {
        text.replace(point, 1, std::localeconv()->decimal_point);
    }
    return std::strtod(text.c_str(), nullptr);
}

/// "e-3" where the e belongs to the number: "2e5 g", but not the e of "2 eggs".
void take_exponent(std::string_view& rest) {
    std::string_view after = rest;
    if (!take_prefix(after, "e") && !take_prefix(after, "E")) return;
    if (!take_prefix(after, "-")) take_prefix(after, "+");
    if (!take_digits(after).empty()) rest = after;
}

/// "12", "1.5", ".5", "1e-3"; empty where none is there. A point needs a digit after it.
std::string_view take_decimal(std::string_view& rest) {
    const std::string_view start = rest;
    const bool has_whole = !take_digits(rest).empty();
    std::string_view after = rest;
    if (take_prefix(after, ".") && !take_digits(after).empty()) rest = after;
    if (!has_whole && rest.size() == start.size()) return {};
    take_exponent(rest);
    return start.substr(0, start.size() - rest.size());
}

/// The "/2" of "1/2"; not a number where it divides by nothing.
std::optional<double> take_denominator(std::string_view& rest) {
    std::string_view after = rest;
    if (!take_prefix(after, "/") && !take_prefix(after, "\u2044")) return std::nullopt;
    const auto digits = take_digits(after);
    if (digits.empty()) return std::nullopt;
    rest = after;
    const double value = decimal_value(digits);
    return value == 0.0 ? std::numeric_limits<double>::quiet_NaN() : value;
}

std::optional<double> take_glyph(std::string_view& rest) {
    for (const auto& glyph : fraction_glyphs) {
        if (take_prefix(rest, glyph.text)) return glyph.value;
    }
    return std::nullopt;
}

/// The "½" or "1/2" that may follow a whole number, blanks between or not.
std::optional<double> take_fraction(std::string_view& rest) {
    std::string_view after = trimmed(rest);
    auto value = take_glyph(after);
    if (!value) {
        const auto numerator = take_digits(after);
        const auto denominator = take_denominator(after);
        if (numerator.empty() || !denominator) return std::nullopt;
        value = decimal_value(numerator) / *denominator;
    }
    rest = after;
    return value;
}

std::optional<double> take_magnitude(std::string_view& rest) {
    if (const auto glyph = take_glyph(rest)) return glyph;
    const auto decimal = take_decimal(rest);
    if (decimal.empty()) return std::nullopt;
    const double value = decimal_value(decimal);
    if (decimal.find_first_not_of("0123456789") != std::string_view::npos) return value;
    if (const auto denominator = take_denominator(rest)) return value / *denominator;
    return value + take_fraction(rest).value_or(0.0);
}

/// A comma may part decimals or thousands; nobody can tell which was meant, so both ways out are named.
std::string comma_hint(std::string_view number, std::string_view from_comma) {
    from_comma.remove_prefix(1);
    const auto digits = take_digits(from_comma);
    const bool plain = number.find('.') == std::string_view::npos && from_comma.substr(0, 1) != ",";
    if (digits.empty() || !plain || number.size() + digits.size() > 20) return "write the number without commas";
    if (digits.size() == 3) return fmt::format("write {0}{1} or {0}.{1}", number, digits);
    return fmt::format("write {}.{}", number, digits);
}

std::string with_digits(double value, int digits) {
    return fmt::format("{:.{}g}", value, digits);
}

void require_finite(double value) {
    if (!std::isfinite(value)) throw std::logic_error("a number that is not finite cannot be written as text");
}

}  // namespace

std::string_view take_digits(std::string_view& rest) {
    const auto digits = rest.substr(0, rest.find_first_not_of("0123456789"));
    rest.remove_prefix(digits.size());
    return digits;
}

std::string_view trimmed(std::string_view text) {
    while (take_blank(text)) {
    }
    while (drop_blank_at_end(text)) {
    }
    return text;
}

std::optional<double> take_number(std::string_view& rest) {
    std::string_view after = trimmed(rest);
    const bool negative = take_prefix(after, "-");
    if (!negative) take_prefix(after, "+");
    const auto magnitude = take_magnitude(after);
    if (!magnitude) return std::nullopt;
    rest = after;
    return negative ? -*magnitude : *magnitude;
}

double take_usable_number(std::string_view& rest, std::string_view whole, std::string_view example) {
    if (trimmed(whole).empty())
        throw InputError("not-a-number", "nothing is written", fmt::format("as in {}", example));
    const std::string_view before = trimmed(rest);
    const auto value = take_number(rest);
    if (!value) {
        throw InputError("not-a-number", fmt::format("{} does not start with a number", in_quotes(whole)),
                         fmt::format("as in {}", example));
    }
    if (rest.substr(0, 1) == ",") {
        throw InputError("not-a-number", fmt::format("{} has a comma in its number", in_quotes(whole)),
                         comma_hint(before.substr(0, before.size() - rest.size()), rest));
    }
    if (std::isnan(*value)) {
        throw InputError("not-a-number", fmt::format("{} divides by nothing", in_quotes(whole)),
                         "write it as in 1/2 or 0.5");
    }
    if (std::abs(*value) > largest_number) {
        throw InputError("too-large", fmt::format("{} is larger than any number used here", in_quotes(whole)),
                         "check its digits; an amount reads like 500 g or 1.5 l");
    }
    return *value;
}

bool is_bare_number(std::string_view text) {
    std::string_view rest = trimmed(text);
    return take_number(rest) && rest.empty();
}

double parse_number(std::string_view text) {
    const std::string_view whole = trimmed(text);
    std::string_view rest = whole;
    const double value = take_usable_number(rest, whole, "12, 1.5 or ½");
    if (!rest.empty()) {
        throw InputError("not-a-number", fmt::format("{} is more than a plain number", in_quotes(whole)),
                         fmt::format("write {} alone", whole.substr(0, whole.size() - rest.size())));
    }
    return value;
}

std::string number_text(double value) {
    require_finite(value);
    if (value == 0.0) return "0";
    for (int digits = 15; digits < 17; ++digits) {
        auto text = with_digits(value, digits);
        if (decimal_value(text) == value) return text;
    }
    return with_digits(value, 17);
}

std::string number_text_within(double value, double error) {
    require_finite(value);
    if (std::abs(value) <= error) return "0";
    for (int digits = 1; digits < 17; ++digits) {
        // Written anew, since "%.1g" makes 4e+02 of 400.
        const double rounded = decimal_value(with_digits(value, digits));
        if (std::abs(rounded - value) <= error) return number_text(rounded);
    }
    return number_text(value);
}

}  // namespace baitwright
