#include "files/kept_cells.h"

#include <bit>
#include <cmath>
#include <cstring>
#include <optional>
#include <stdexcept>

#include "bait/stock_mass.h"
#include "quantities/all_digits.h"
#include "quantities/amount_range.h"
#include "quantities/date.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/plain_words.h"
#include "quantities/quantity_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

constexpr std::int64_t largest_number_of_row = 1'000'000'000'000'000;
constexpr std::size_t bytes_of_number = 8;
/// A number at the end of its range may be a hair beyond, whatever its unit rounds to.
constexpr double cell_slack = 1e-9;

std::int64_t whole_of(const KeptValue& value) {
    return std::get<std::int64_t>(value);
}
const std::string& text_of_value(const KeptValue& value) {
    return std::get<std::string>(value);
}

std::uint64_t turned_little(std::uint64_t bits) {
    if constexpr (std::endian::native == std::endian::big) return __builtin_bswap64(bits);
    return bits;
}

/// "1.5" of 1500 thousandths, exactly.
std::string thousandths(std::int64_t count) {
    const bool below = count < 0;
    std::string digits = std::to_string(count).substr(below ? 1 : 0);
    if (digits.size() < 4) digits.insert(0, 4 - digits.size(), '0');
    digits.insert(digits.size() - 3, ".");
    digits.erase(digits.find_last_not_of('0') + 1);
    if (digits.back() == '.') digits.pop_back();
    return (below ? "-" : "") + digits;
}

// ---- written

std::string quantity_cell(const KeptColumn& column, double si) {
    if (column.unit == "degC") {
        const auto degrees = celsius_to_the_bit(si);
        return degrees ? *degrees : temperature_to_the_bit(si);
    }
    const auto number = number_to_the_bit(si, unit_called(column.unit)->in_si);
    return number ? *number : text_to_the_bit(si, column.unit);
}

std::string amount_cell(const std::string& measure, double si) {
    if (measure == "volume") return text_to_the_bit(si, "ml");
    return text_to_the_bit(si, measure == "length" ? "mm" : "g");
}

std::string numbers_cell(const std::string& bytes) {
    std::string cell;
    for (std::size_t at = 0; at + bytes_of_number <= bytes.size(); at += bytes_of_number) {
        std::uint64_t bits = 0;
        std::memcpy(&bits, bytes.data() + at, bytes_of_number);
        const auto number = std::bit_cast<double>(turned_little(bits));
        cell += (cell.empty() ? "" : " ") + (std::isfinite(number) ? number_text(number) : std::string("nothing"));
    }
    return cell;
}

// ---- read

[[noreturn]] void refuse_cell(std::string code, std::string message, std::string hint) {
    throw InputError(std::move(code), std::move(message), std::move(hint));
}

std::int64_t read_whole_cell(std::string_view cell, double least, double most) {
    const double number = parse_number(cell);
    if (number != std::floor(number)) refuse_cell("not-whole", in_quotes(cell) + " is no whole number", "as in 12");
    if (!(number >= least && number <= most))
        refuse_cell("out-of-range",
                    in_quotes(cell) + " must be from " + number_text(least) + " to " + number_text(most),
                    "look at its digits");
    return static_cast<std::int64_t>(number);
}

void hold_range(const KeptColumn& column, double si, const std::string& least, const std::string& most) {
    const double slack = cell_slack * std::max(std::abs(column.least), std::abs(column.most));
    if (si >= column.least - slack && si <= column.most + slack) return;
    refuse_cell("out-of-range", "it must be from " + least + " to " + most, "look at the number and its unit");
}

double read_bare(const KeptColumn& column, std::string_view cell) {
    const double number = parse_number(cell);
    hold_range(column, number, number_text(column.least), number_text(column.most));
    return number;
}

double si_with_unit(Measure measure, std::string_view cell) {
    switch (measure) {
        case Measure::mass:
            return parse<Mass>(cell).si();
        case Measure::length:
            return parse<Length>(cell).si();
        case Measure::volume:
            return parse<Volume>(cell).si();
        case Measure::time:
            return parse<Time>(cell).si();
        case Measure::ratio:
            return parse<Ratio>(cell).si();
        case Measure::temperature:
            return parse<Temperature>(cell).in_kelvin();
        default:
            throw std::logic_error("a kept quantity of another measure");
    }
}

double read_quantity(const KeptColumn& column, std::string_view cell) {
    const UnitRow& unit = *unit_called(column.unit);
    const bool warmth = unit.measure == Measure::temperature;
    double si = 0;
    if (!is_bare_number(cell))
        si = si_with_unit(unit.measure, cell);
    else if (warmth)
        si = Temperature::from_celsius(parse_number(cell)).in_kelvin();
    else
        si = parse_number(cell) * unit.in_si;
    const auto shown = [&](double bound) {
        return number_text_within(warmth ? bound - 273.15 : bound / unit.in_si, 1e-9 * std::abs(bound)) + " " +
               std::string(column.unit);
    };
    hold_range(column, si, shown(column.least), shown(column.most));
    return si;
}

void read_amount_cell(const KeptColumn& column, std::string_view cell, KeptValue* values) {
    const auto measure = measured_in(cell);
    for (const std::string_view word : column.words) {
        const Measure wanted = word == "mass" ? Measure::mass : word == "volume" ? Measure::volume : Measure::length;
        if (measure != wanted) continue;
        const double si = si_with_unit(wanted, cell);
        hold_range(column, si, "0", "10000 kg, 10000 l or 1000 m");
        values[0] = std::string(word);
        values[1] = si;
        return;
    }
    refuse_cell("wrong-dimension", in_quotes(cell) + " is no amount that can stand here",
                column.words.back() == "length" ? "write it with its unit, as in 250 ml or 55 mm"
                                                : "write it with its unit, as in 500 g or 1.5 l");
}

void read_money_cell(std::string_view cell, KeptValue* values) {
    const Money money = in_range(parse_money(cell));
    values[0] = money.minor();
    values[1] = std::string(money.currency().code);
}

std::string read_word(const KeptColumn& column, std::string_view cell) {
    const std::string folded = folded_name(cell);
    std::vector<std::string> words;
    for (const std::string_view word : column.words) {
        if (word == folded) return folded;
        words.emplace_back(word);
    }
    const std::string near = did_you_mean(folded, words);
    refuse_cell("unknown-word", in_quotes(cell) + " cannot stand here",
                near.empty() ? "it is one of " + joined(words, ", ") : near);
}

std::int64_t read_truth(std::string_view cell) {
    const std::string folded = folded_name(cell);
    if (folded != "yes" && folded != "no")
        refuse_cell("unknown-word", in_quotes(cell) + " is neither yes nor no", "write yes or no");
    return folded == "yes" ? 1 : 0;
}

std::int64_t read_grams(std::string_view cell) {
    const double kilograms = is_bare_number(cell) ? parse_number(cell) / 1000 : parse<Mass>(cell).si();
    if (!(std::abs(kilograms) <= 1e4 * (1 + cell_slack)))
        refuse_cell("out-of-range", "it must be from -10000 kg to 10000 kg", "look at the number; it is in g");
    const double milligrams = is_bare_number(cell) ? parse_number(cell) * 1000 : kilograms * 1e6;
    const std::int64_t count = round_half_even(milligrams);
    if (std::abs(milligrams - static_cast<double>(count)) > 1e-3)
        refuse_cell("too-fine", "the shed weighs to the milligram", "give it at most three digits behind the point");
    return count;
}

std::string read_mark_cell(std::string_view cell) {
    std::string digits = folded_name(cell);
    if (!digits.empty() && digits.front() == 'm') digits.erase(0, 1);
    if (digits.size() != 32 || digits.find_first_not_of("0123456789abcdef") != std::string::npos)
        refuse_cell("no-mark", in_quotes(cell) + " is no mark of an entry",
                    "put back what stood there; of an entry of your own leave it empty");
    return digits;
}

std::string read_numbers(std::string_view cell) {
    std::string bytes;
    while (!trimmed(cell).empty()) {
        cell = trimmed(cell);
        const std::string_view one = cell.substr(0, cell.find(' '));
        const std::uint64_t bits = turned_little(std::bit_cast<std::uint64_t>(parse_number(one)));
        bytes.append(reinterpret_cast<const char*>(&bits), bytes_of_number);
        cell.remove_prefix(one.size());
    }
    return bytes;
}

std::string read_letters(const KeptColumn& column, std::string_view cell) {
    const LineBreaks breaks = column.form == CellForm::prose ? LineBreaks::allowed : LineBreaks::refused;
    if (const std::string unfit = unfit_in(cell, breaks); !unfit.empty())
        refuse_cell("unfit-letter", "it holds " + unfit, "write it in plain letters");
    if (column.form == CellForm::name && !cell.empty())
        if (const std::string refused = refused_as_name(cell); !refused.empty())
            refuse_cell("bad-name", in_quotes(cell) + " " + refused, "give it a name in plain letters");
    return std::string(cell);
}

}  // namespace

std::string kept_cell(const KeptColumn& column, const KeptValue* values) {
    if (std::holds_alternative<std::monostate>(values[0])) return {};
    switch (column.form) {
        case CellForm::number:
        case CellForm::whole:
            return std::to_string(whole_of(values[0]));
        case CellForm::bare:
            return number_text(std::get<double>(values[0]));
        case CellForm::truth:
            return whole_of(values[0]) != 0 ? "yes" : "no";
        case CellForm::quantity:
            return quantity_cell(column, std::get<double>(values[0]));
        case CellForm::amount:
            return amount_cell(text_of_value(values[0]), std::get<double>(values[1]));
        case CellForm::money:
            return money_text(Money(whole_of(values[0]), currency_named(text_of_value(values[1]))));
        case CellForm::grams:
            return thousandths(whole_of(values[0]));
        case CellForm::mark:
            return "m" + text_of_value(values[0]);
        case CellForm::numbers:
            return numbers_cell(text_of_value(values[0]));
        case CellForm::name:
            return text_of_value(values[0]).empty() ? std::string() : mended_name(text_of_value(values[0]));
        case CellForm::prose:
            return written_out(text_of_value(values[0]), LineBreaks::allowed);
        case CellForm::line:
        case CellForm::word:
        case CellForm::date:
            return written_out(text_of_value(values[0]));
    }
    return {};
}

void read_kept_cell(const KeptColumn& column, std::string_view cell, KeptValue* values) {
    const bool letters =
        column.form == CellForm::line || column.form == CellForm::prose || column.form == CellForm::name;
    for (std::size_t i = 0; i < values_in(column.form); ++i) values[i] = std::monostate{};
    if (trimmed(cell).empty() && !(letters && !column.optional)) {
        if (column.optional || column.form == CellForm::numbers) return;
        refuse_cell("missing-value", "'" + column.heading + "' must be said", "fill in the cell, or take the row out");
    }
    const std::string_view plain = trimmed(cell);
    switch (column.form) {
        case CellForm::number:
            values[0] = read_whole_cell(plain, 1, static_cast<double>(largest_number_of_row));
            return;
        case CellForm::whole:
            values[0] = read_whole_cell(plain, column.least, column.most);
            return;
        case CellForm::bare:
            values[0] = read_bare(column, plain);
            return;
        case CellForm::truth:
            values[0] = read_truth(plain);
            return;
        case CellForm::quantity:
            values[0] = read_quantity(column, plain);
            return;
        case CellForm::amount:
            return read_amount_cell(column, plain, values);
        case CellForm::money:
            return read_money_cell(plain, values);
        case CellForm::grams:
            values[0] = read_grams(plain);
            return;
        case CellForm::mark:
            values[0] = read_mark_cell(plain);
            return;
        case CellForm::numbers:
            values[0] = read_numbers(plain);
            return;
        case CellForm::word:
            values[0] = read_word(column, plain);
            return;
        case CellForm::date:
            values[0] = date_text(parse_stored_date(plain));
            return;
        case CellForm::name:
        case CellForm::line:
        case CellForm::prose:
            values[0] = read_letters(column, cell);
            return;
    }
}

}  // namespace baitwright
