#include "files/kept_cells.h"

#include <cstring>
#include <string>
#include <variant>

#include "files/little_endian.h"
#include "quantities/all_digits.h"
#include "quantities/money.h"
#include "quantities/plain_words.h"
#include "quantities/quantity_text.h"

namespace baitwright {

namespace {

std::int64_t whole_of(const KeptValue& value) {
    return std::get<std::int64_t>(value);
}
const std::string& text_of_value(const KeptValue& value) {
    return std::get<std::string>(value);
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
        case CellForm::clock:
            return written_out(text_of_value(values[0]));
    }
    return {};
}

}  // namespace baitwright
