#include "quantities/quantity_text.h"

#include <fmt/format.h>

#include <cmath>

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

bool starts_a_word(char c) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    return letter || c == '%' || static_cast<unsigned char>(c) >= 0x80U;
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
    return nullptr;
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

/// Takes a number and its unit off the front of `rest`; the unit must measure what is needed.
Part take_part(std::string_view& rest, std::string_view whole, Measure needed) {
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
    const auto text = start.substr(0, start.size() - rest.size());
    if (unit->measure != needed) {
        throw InputError("wrong-dimension",
                         fmt::format("{} is {}, but {} is needed here", in_quotes(text), measure_name(unit->measure),
                                     measure_name(needed)),
                         units_that_fit(needed));
    }
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
    const Part part = take_part(rest, whole, needed);
    if (part.unit->in_si >= before.unit->in_si) {
        throw InputError("out-of-order", fmt::format("{} has its parts out of order", in_quotes(whole)),
                         "write the larger unit first, each once, as in 1 lb 4 oz");
    }
    return part;
}

double read_si(std::string_view text, Measure needed) {
    const std::string_view whole = trimmed(text);
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

std::string exact_text(Temperature temperature) {
    // The error allowed is of the point on the scale, not of the digits: 0.01 degC is 273.16 K.
    return number_text_within(temperature.in_celsius(), 0.5e-12 * std::abs(temperature.in_kelvin())) + " degC";
}

}  // namespace baitwright
