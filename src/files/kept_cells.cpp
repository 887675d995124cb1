#include "files/kept_cells.h"

#include <cmath>
#include <cstring>
#include <optional>
#include <stdexcept>

#include "bait/stock_mass.h"
#include "files/little_endian.h"
#include "quantities/all_digits.h"
#include "quantities/amount_range.h"
#include "quantities/clock.h"
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
/// A number at the end of its range may be a hair beyond, whatever its unit rounds to.
constexpr double cell_slack = 1e-9;
constexpr double most_cubic_metres = 10, most_metres = 1000;

// ---- written

// ---- read

[[noreturn]] void refuse_cell(std::string code, std::string message, std::string hint) {
    throw InputError(std::move(code), std::move(message), std::move(hint));
}

/// The digits of most cells, up to 15 of them, at once; nothing of what is written otherwise.
std::optional<std::int64_t> plain_digits(std::string_view text) {
    if (text.empty() || text.size() > 15 || text.find_first_not_of("0123456789") != std::string_view::npos)
        return std::nullopt;
    std::int64_t number = 0;
    for (const char digit : text) number = 10 * number + (digit - '0');
    return number;
}

std::int64_t read_whole_cell(std::string_view cell, double least, double most) {
    const auto plain = plain_digits(cell);
    const double number = plain ? static_cast<double>(*plain) : parse_number(cell);
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
        KeptColumn of_measure = column;
        if (wanted == Measure::volume) of_measure.most = most_cubic_metres;
        if (wanted == Measure::length) of_measure.most = most_metres;
        hold_range(of_measure, si, "0", "10000 kg, 10000 l or 1000 m");
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

/// An empty cell is an empty text: what was not said.
bool may_stay_unsaid(const KeptColumn& column) {
    switch (column.form) {
        case CellForm::line:
        case CellForm::prose:
        case CellForm::name:
        case CellForm::clock:
            return !column.optional;
        case CellForm::word:
            return !column.words.empty() && column.words.front().empty();
        default:
            return false;
    }
}

std::string read_word(const KeptColumn& column, std::string_view cell) {
    for (const std::string_view word : column.words)
        if (word == cell) return std::string(cell);
    std::string folded = folded_name(cell);
    std::vector<std::string> words;
    for (const std::string_view word : column.words) {
        if (word == folded) return folded;
        words.emplace_back(word);
    }
    const bool may_be_empty = may_stay_unsaid(column);
    if (may_be_empty) words.erase(words.begin());
    const std::string near = did_you_mean(folded, words);
    refuse_cell("unknown-word", in_quotes(cell) + " cannot stand here",
                !near.empty() ? near : "it is one of " + joined(words, ", ") + (may_be_empty ? ", or empty" : ""));
}

std::int64_t read_truth(std::string_view cell) {
    const std::string folded = folded_name(cell);
    if (folded != "yes" && folded != "no")
        refuse_cell("unknown-word", in_quotes(cell) + " is neither yes nor no", "write yes or no");
    return folded == "yes" ? 1 : 0;
}

/// "-1.5" as -1500 thousandths; nothing of what is written otherwise.
std::optional<std::int64_t> plain_thousandths(std::string_view cell) {
    const bool below = !cell.empty() && cell.front() == '-';
    if (below) cell.remove_prefix(1);
    const auto point = std::min(cell.find('.'), cell.size());
    const std::string_view behind = point < cell.size() ? cell.substr(point + 1) : "0";
    const auto grams = plain_digits(cell.substr(0, std::min<std::size_t>(point, 8))), parts = plain_digits(behind);
    if (point > 7 || !grams || !parts || behind.size() > 3) return std::nullopt;
    std::int64_t thousandths_behind = *parts;
    for (std::size_t digits = behind.size(); digits < 3; ++digits) thousandths_behind *= 10;
    return (below ? -1 : 1) * (*grams * 1000 + thousandths_behind);
}

std::int64_t read_grams(std::string_view cell) {
    if (const auto plain = plain_thousandths(cell); plain && std::abs(*plain) <= 10'000'000'000) return *plain;
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

/// Of a cell that is not empty and holds one value.
KeptValue read_one_value(const KeptColumn& column, std::string_view cell) {
    const std::string_view plain = trimmed(cell);
    switch (column.form) {
        case CellForm::number:
            return read_whole_cell(plain, 1, static_cast<double>(largest_number_of_row));
        case CellForm::whole:
            return read_whole_cell(plain, column.least, column.most);
        case CellForm::bare:
            return read_bare(column, plain);
        case CellForm::truth:
            return read_truth(plain);
        case CellForm::quantity:
            return read_quantity(column, plain);
        case CellForm::grams:
            return read_grams(plain);
        case CellForm::mark:
            return read_mark_cell(plain);
        case CellForm::numbers:
            return read_numbers(plain);
        case CellForm::word:
            return read_word(column, plain);
        case CellForm::date:
            return date_text(parse_stored_date(plain));
        case CellForm::clock:
            return plain.empty() ? std::string() : clock_text(parse_clock(plain));
        case CellForm::name:
        case CellForm::line:
        case CellForm::prose:
            return read_letters(column, cell);
        case CellForm::amount:
        case CellForm::money:
            break;  // two values
    }
    return {};
}

}  // namespace

void read_kept_cell(const KeptColumn& column, std::string_view cell, KeptValue* values) {
    for (std::size_t i = 0; i < values_in(column.form); ++i) values[i] = std::monostate{};
    if (trimmed(cell).empty() && !may_stay_unsaid(column)) {
        if (!column.optional && column.form == CellForm::numbers) values[0] = std::string();
        if (column.optional || column.form == CellForm::numbers) return;
        refuse_cell("missing-value", "'" + column.heading + "' must be said", "fill in the cell, or take the row out");
    }
    if (column.form == CellForm::amount) return read_amount_cell(column, trimmed(cell), values);
    if (column.form == CellForm::money) return read_money_cell(trimmed(cell), values);
    values[0] = read_one_value(column, cell);
}

}  // namespace baitwright
