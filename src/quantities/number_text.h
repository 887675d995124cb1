#pragma once

#include <optional>
#include <string>
#include <string_view>

/// Numbers as people write them, taken off the front of a text: for the readers of quantities, counts and money. And
/// numbers as text.
namespace baitwright {

/// The text without the blanks around it; no-break and thin spaces, which web pages set before units, are blanks too.
std::string_view trimmed(std::string_view text);

/// Takes the digits at the front off `rest`.
std::string_view take_digits(std::string_view& rest);

/// Takes the number at the front off `rest`: "2.5", "-3", "1e-3", "½", "2½", "1/2", "1 1/2". Blanks before it go too.
/// Nothing, and `rest` as it was, where no number stands there. Callers judge it: "1/0" is not a
/// number, "1e999" infinite.
std::optional<double> take_number(std::string_view& rest);

/// The same, refusing what is no usable number: InputError "not-a-number" (none there, a comma in it, divided by
/// nothing) or "too-large". `whole` is what the person wrote, `example` what would do ("400 g").
double take_usable_number(std::string_view& rest, std::string_view whole, std::string_view example);

/// Whether the text is a number and nothing behind it: "12", "½", "-3", right or wrong.
bool is_bare_number(std::string_view text);

/// A plain number: "12", "1.5", "½", "2½", "3/4", "1e-3". No unit, no comma; nan and infinities are refused.
double parse_number(std::string_view text);

/// The shortest decimal text that `parse_number` reads back to just this value, whatever the locale: "0.1", "1e-09".
std::string number_text(double value);

/// The shortest decimal text whose value is at most `error` away.
std::string number_text_within(double value, double error);

}  // namespace baitwright
