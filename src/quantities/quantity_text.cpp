#include "quantities/quantity_text.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

#include "quantities/amount_words.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/unit_table.h"

namespace baitwright {

namespace {

/// One number with its unit: "4 oz".
struct Part {
    double number;
    const UnitRow* unit;
    std::string_view text;
};

/// A unit's first letter, or the mark of feet, inches or a share.
bool starts_a_word(char c) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    return letter || c == '%' || c == '\'' || c == '"' || static_cast<unsigned char>(c) >= 0x80U;
}

/// The first `count` words, with the blanks between them; empty where there are not so many.
std::string_view first_words(std::string_view text, int count) {
    std::size_t end = 0;
    for (int word = 0; word < count; ++word) {
        const auto start = text.find_first_not_of(' ', end);
        if (start == std::string_view::npos) return {};
        end = std::min(text.find_first_of(" \t\r\n", start), text.size());
    }
    return text.substr(0, end);
}

/// The "30" of "2h30" and "2 h 30": two digits that end the text, below sixty.
bool is_minutes_of_an_hour(std::string_view text) {
    const auto digits = take_digits(text);
    return text.empty() && digits.size() == 2 && digits.front() < '6';
}

const UnitRow* take_unit(std::string_view& rest);

/// Whether the "6in" of "8ft6in" follows, or the "30" of "2h30".
bool goes_on(std::string_view rest, const UnitRow& before) {
    if (before.symbol == "h" && is_minutes_of_an_hour(rest)) return true;
    if (!comes_in_parts(before.measure) || !take_number(rest)) return false;
    rest = trimmed(rest);
    return !rest.empty() && starts_a_word(rest.front()) && take_unit(rest) != nullptr;
}

/// Takes the "ft" off "ft6in", where the parts are written without blanks.
const UnitRow* take_glued_unit(std::string_view& rest) {
    const auto name = rest.substr(0, rest.find_first_of("0123456789 \t\r\n"));
    const auto* row = unit_called(name);
    if (!row || !goes_on(rest.substr(name.size()), *row)) return nullptr;
    rest.remove_prefix(name.size());
    return row;
}

/// Takes the unit off the front of `rest`, longest name first: "fl oz" before "fl". Null where it is not known.
const UnitRow* take_unit(std::string_view& rest) {
    for (int words = 3; words >= 1; --words) {
        const auto name = first_words(rest, words);
        if (name.empty()) continue;
        if (const auto* row = unit_called(name)) {
            rest.remove_prefix(name.size());
            return row;
        }
    }
    return take_glued_unit(rest);
}

[[noreturn]] void refuse_unknown_unit(std::string_view whole, std::string_view word, Measure needed) {
    const auto* nearest = unit_nearest(word, needed);
    throw InputError("unknown-unit", fmt::format("{}: unknown unit {}", in_quotes(whole), in_quotes(word)),
                     nearest ? fmt::format("did you mean '{}'?", nearest->symbol) : units_that_fit(needed));
}

[[noreturn]] void refuse_rest(std::string_view whole, std::string_view rest, Measure needed) {
    throw InputError("not-a-number", fmt::format("{}: {} is left over", in_quotes(whole), in_quotes(rest)),
                     fmt::format("write {} as in {}", measure_name(needed), measure_example(needed)));
}

void require_measure(const UnitRow& unit, std::string_view text, Measure needed) {
    if (unit.measure == needed) return;
    throw InputError("wrong-dimension",
                     fmt::format("{} is {}, but {} is needed here", in_quotes(text), measure_name(unit.measure),
                                 measure_name(needed)),
                     units_that_fit(needed));
}

/// Takes a number and its unit off the front of `rest`; the unit must measure what is needed. Behind hours, which
/// `before` may be, an "m" is minutes: "1h30m".
Part take_part(std::string_view& rest, std::string_view whole, Measure needed, const UnitRow* before = nullptr) {
    const std::string_view start = trimmed(rest);
    const double number = take_usable_number(rest, whole, measure_example(needed));
    rest = trimmed(rest);
    if (rest.empty()) {
        throw InputError("no-unit", fmt::format("{} has no unit", in_quotes(start)), units_that_fit(needed));
    }
    // "0x10" is a number of another kind, and no unit starts with an x.
    if (!starts_a_word(rest.front()) || rest.front() == 'x') refuse_rest(whole, rest, needed);
    const auto* unit = take_unit(rest);
    if (!unit) refuse_unknown_unit(whole, first_words(rest, 1), needed);
    const bool after_hours = before && before->symbol == "h";
    if (after_hours && unit->symbol == "m") unit = unit_called("min");
    const auto text = start.substr(0, start.size() - rest.size());
    require_measure(*unit, text, needed);
    return {number, unit, text};
}

/// Takes the "4 oz" of "1 lb 4 oz": unsigned, and in a smaller unit than the part before it.
Part take_further_part(std::string_view& rest, std::string_view whole, const Part& before) {
    const Measure needed = before.unit->measure;
    std::string_view ahead = rest;
    const auto number = take_number(ahead);
    if (!number || !comes_in_parts(needed)) refuse_rest(whole, trimmed(rest), needed);
    const char sign = trimmed(rest).front();
    if (sign == '-' || sign == '+') {
        throw InputError("out-of-order", fmt::format("{} has a sign inside", in_quotes(whole)),
                         "a sign belongs in front of the whole");
    }
    if (before.unit->symbol == "h" && is_minutes_of_an_hour(trimmed(rest))) {
        const std::string_view minutes = std::exchange(rest, {});
        return {*number, unit_called("min"), trimmed(minutes)};
    }
    const Part part = take_part(rest, whole, needed, before.unit);
    if (part.unit->in_si >= before.unit->in_si) {
        throw InputError("out-of-order", fmt::format("{} has its parts out of order", in_quotes(whole)),
                         "write the larger unit first, each once, as in 1 lb 4 oz");
    }
    return part;
}

double read_si(std::string_view text, Measure needed) {
    const std::string_view whole = trimmed(text);
    if (const auto said = comes_in_parts(needed) ? amount_in_words(whole) : std::nullopt) {
        require_measure(*said->unit, whole, needed);
        return said->number * said->unit->in_si;
    }
    std::string_view rest = whole;
    Part part = take_part(rest, whole, needed);
    const bool negative = std::signbit(part.number);
    double size = std::abs(part.number) * part.unit->in_si;
    while (!trimmed(rest).empty()) {
        part = take_further_part(rest, whole, part);
        size += part.number * part.unit->in_si;
    }
    return negative ? -size : size;
}

template <class Q>
Q read(std::string_view text, Measure needed) {
    return Q::from_si(read_si(text, needed));
}

}  // namespace

template <>
Mass parse<Mass>(std::string_view text) {
    return read<Mass>(text, Measure::mass);
}
template <>
Length parse<Length>(std::string_view text) {
    return read<Length>(text, Measure::length);
}
template <>
Volume parse<Volume>(std::string_view text) {
    return read<Volume>(text, Measure::volume);
}
template <>
Time parse<Time>(std::string_view text) {
    return read<Time>(text, Measure::time);
}
template <>
Density parse<Density>(std::string_view text) {
    return read<Density>(text, Measure::density);
}
template <>
Speed parse<Speed>(std::string_view text) {
    return read<Speed>(text, Measure::speed);
}
template <>
Diffusivity parse<Diffusivity>(std::string_view text) {
    return read<Diffusivity>(text, Measure::diffusivity);
}
template <>
MolarEnergy parse<MolarEnergy>(std::string_view text) {
    return read<MolarEnergy>(text, Measure::molar_energy);
}
template <>
Pressure parse<Pressure>(std::string_view text) {
    return read<Pressure>(text, Measure::pressure);
}
template <>
Ratio parse<Ratio>(std::string_view text) {
    return read<Ratio>(text, Measure::ratio);
}
template <>
Temperature parse<Temperature>(std::string_view text) {
    const std::string_view whole = trimmed(text);
    std::string_view rest = whole;
    const Part part = take_part(rest, whole, Measure::temperature);
    if (!trimmed(rest).empty()) refuse_rest(whole, trimmed(rest), Measure::temperature);
    if (part.unit->symbol == "degC") return Temperature::from_celsius(part.number);
    if (part.unit->symbol == "degF") return Temperature::from_fahrenheit(part.number);
    return Temperature::from_kelvin(part.number);
}

const UnitRow* unit_used(std::string_view text) {
    if (const auto said = amount_in_words(text)) return said->unit;
    const UnitRow* used = nullptr;
    for (std::string_view rest = trimmed(text); !rest.empty(); rest = trimmed(rest)) {
        if (!take_number(rest)) return nullptr;
        rest = trimmed(rest);
        const UnitRow* unit = take_unit(rest);
        if (!unit || (used && used->measure != unit->measure)) return nullptr;
        if (!used) used = unit;
    }
    return used;
}

std::optional<Measure> measured_in(std::string_view text) {
    if (const auto said = amount_in_words(text)) return said->unit->measure;
    std::string_view rest = text;
    if (!take_number(rest)) return std::nullopt;
    rest = trimmed(rest);
    const auto* unit = rest.empty() ? nullptr : take_unit(rest);
    if (!unit) return std::nullopt;
    try {
        read_si(text, unit->measure);
        return unit->measure;
    } catch (const InputError&) {
        return std::nullopt;
    }
}

std::string exact_text(Temperature temperature) {
    if (all_digits_wanted()) return temperature_to_the_bit(temperature.in_kelvin());
    // The error allowed is of the point on the scale, not of the digits: 0.01 degC is 273.16 K.
    return number_text_within(temperature.in_celsius(), 0.5e-12 * std::abs(temperature.in_kelvin())) + " degC";
}

}  // namespace baitwright
