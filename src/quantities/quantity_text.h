#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <string_view>

#include "quantities/all_digits.h"
#include "quantities/number_text.h"
#include "quantities/quantity.h"
#include "quantities/temperature.h"
#include "quantities/unit_table.h"

/// Quantities from text and back: "400 g", "1 lb 4 oz", "8ft6in", "½ pt", "2½ pt", "1/2 pt", "12 degC", "2e-10 m2/s".
/// Hours may end in bare minutes ("2h30", "1h30m"); what comes in parts may be said in words (`amount_in_words`). All
/// readers ignore blanks around, accept "2pt" and "2 pt", and throw InputError with codes
/// "no-unit", "unknown-unit", "wrong-dimension", "not-a-number", "out-of-order", "too-large" (above 1e300); the hint
/// names units that fit. The case of a unit does not matter. Below zero is read: callers judge the range.
namespace baitwright {

template <class Q>
Q parse(std::string_view text);
template <>
Mass parse<Mass>(std::string_view text);
template <>
Length parse<Length>(std::string_view text);
template <>
Volume parse<Volume>(std::string_view text);
template <>
Time parse<Time>(std::string_view text);
template <>
Density parse<Density>(std::string_view text);
template <>
Speed parse<Speed>(std::string_view text);
template <>
Diffusivity parse<Diffusivity>(std::string_view text);
template <>
MolarEnergy parse<MolarEnergy>(std::string_view text);
template <>
Pressure parse<Pressure>(std::string_view text);
/// "15 %", "0.65 g/g": pure ratios; a bare number is refused (`parse_number` reads those).
template <>
Ratio parse<Ratio>(std::string_view text);
template <>
Temperature parse<Temperature>(std::string_view text);

struct UnitRow;
/// The unit that a whole text is written in, the largest of its parts: ft of "8 ft 6 in". Null of what is no quantity.
const UnitRow* unit_used(std::string_view text);

/// What the text is one whole amount of: a mass for "1.5 kg" and "half a kilo". Nothing where it is none.
std::optional<Measure> measured_in(std::string_view text);

/// "12x55mm", "4 x 250 ml", "3×egg": how many of what size; the size is returned as written. InputError
/// "no-count" (no count, or no size after it) or "bad-count" (not a whole number from 1 to 100000).
struct CountedSize {
    int count;
    std::string size;
};
CountedSize parse_counted_size(std::string_view text);
/// "12": how many, where no size stands behind it; the same "bad-count". `is_bare_number` says whether it is one.
int parse_count(std::string_view text);

/// The diameter of "egg", "golf ball", "55 mm"; the volume of "cup 250", "toss pot 25", "250 ml", "½ pt".
/// A name that is not known: InputError "unknown-size". What starts like a number is read by `parse`.
Length parse_ball_size(std::string_view text);
Volume parse_vessel_size(std::string_view text);
/// All names there are, as a message lists them: "walnut, golf ball, ...".
std::string ball_size_names();
std::string vessel_size_names();

/// The shortest text that `parse` reads back to the same value within 1e-12 relative, in the unit named (by custom g,
/// ml, mm, s, g/l, cm/s, m2/s, kJ/mol, kPa; ratios in %): for files and export, not for display. Where `AllDigitsHere`
/// lives, to the same value, in that unit or in the SI's.
template <class D>
std::string exact_text(Quantity<D> quantity, Unit<D> unit, std::string_view unit_symbol) {
    // Less than 1e-12, to leave room for the rounding in the factor of the unit, there and back.
    const double value = quantity.in(unit);
    if (all_digits_wanted()) return text_to_the_bit(quantity.si(), unit_symbol);
    return number_text_within(value, 0.99e-12 * std::abs(value)) + ' ' + std::string(unit_symbol);
}
/// The same in degC, within 1e-12 of the kelvins.
std::string exact_text(Temperature temperature);

}  // namespace baitwright
