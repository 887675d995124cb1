#include "report/text_table.h"

#include <algorithm>
#include <cctype>

#include "quantities/plain_words.h"
#include "quantities/unit_table.h"
#include "report/degree_sign.h"

namespace baitwright {

namespace {

constexpr std::string_view indent = "  ", between = "  ";
/// The first column is broken to no less than this.
constexpr std::size_t fewest_of_first = 12;
/// A paragraph with less room than this beside its word goes below it, so far in.
constexpr std::size_t fewest_beside = 20, hang_below = 6;

bool is_unit(std::string_view word) {
    const auto last = word.find_last_not_of(".,;:)");
    return last != std::string_view::npos && unit_called(std::string(word.substr(0, last + 1)));
}

/// Up to the next blank; a number keeps its unit: "4.9 %", "10 kg", "6 fl oz".
std::string_view next_word(std::string_view text) {
    const auto end = text.find(' ');
    if (end == std::string_view::npos || end == 0 || !std::isdigit(static_cast<unsigned char>(text[end - 1])))
        return text.substr(0, end);
    const auto after = text.find(' ', end + 1);
    const auto unit = text.substr(end + 1, after == std::string_view::npos ? after : after - end - 1);
    if (unit == "fl" && text.substr(after).starts_with(" oz")) return text.substr(0, text.find(' ', after + 1));
    return is_unit(unit) ? text.substr(0, after) : text.substr(0, end);
}

std::string padded(const std::string& cell, std::size_t width, TextTable::Align align) {
    const std::string blanks(width - std::min(width, text_width(cell)), ' ');
    return align == TextTable::Align::left ? cell + blanks : blanks + cell;
}

void trim_right(std::string& line) {
    line.erase(line.find_last_not_of(' ') + 1);
}

}  // namespace

std::vector<std::string> broken_at_blanks(std::string_view text, std::size_t width) {
    std::vector<std::string> lines;
    std::string line;
    while (!text.empty()) {
        const auto start = text.find_first_not_of(' ');
        if (start == std::string_view::npos) break;
        text.remove_prefix(start);
        const std::string_view word = next_word(text);
        if (!line.empty() && text_width(line) + 1 + text_width(word) > width) {
            lines.push_back(std::move(line));
            line.clear();
        }
        if (!line.empty()) line += ' ';
        line += word;
        text.remove_prefix(word.size());
    }
    lines.push_back(std::move(line));
    return lines;
}

void TextTable::row(std::vector<std::string> cells) {
    cells.resize(columns_.size());
    for (std::string& cell : cells) {
        cell = for_terminal(cell);
        if (first_unfit_letter(cell)) cell = written_out(cell);  // a line break would break the table
    }
    rows_.push_back(std::move(cells));
}

void TextTable::rule() {
    rows_.emplace_back();
}

/// All cells but the first.
std::string TextTable::other_cells(const std::vector<std::string>& cells, const std::vector<std::size_t>& widths,
                                   std::string_view before) const {
    std::string line;
    for (std::size_t i = 1; i < cells.size(); ++i)
        line += std::string(before) + padded(cells[i], widths[i], columns_[i]);
    return line;
}

std::string TextTable::side_by_side(const std::vector<std::size_t>& widths) const {
    std::size_t others = 0;
    for (std::size_t i = 1; i < widths.size(); ++i) others += widths[i] + between.size();
    std::string text;
    for (const auto& cells : rows_) {
        if (cells.empty()) {
            text += std::string(indent) + std::string(others + widths[0], '-') + "\n";
            continue;
        }
        const std::vector<std::string> names = broken_at_blanks(cells[0], widths[0]);
        for (std::size_t n = 0; n < names.size(); ++n) {
            std::string line = std::string(indent) + padded(names[n], widths[0], columns_[0]);
            if (n + 1 == names.size()) line += other_cells(cells, widths, between);
            trim_right(line);
            text += line + "\n";
        }
    }
    return text;
}

std::string TextTable::below_each_other(const std::vector<std::size_t>& widths) const {
    std::string text;
    for (const auto& cells : rows_) {
        if (cells.empty()) {
            text += std::string(indent) + std::string(columns_shown() - indent.size(), '-') + "\n";
            continue;
        }
        if (!cells[0].empty())
            for (const std::string& line : broken_at_blanks(cells[0], columns_shown() - indent.size()))
                text += std::string(indent) + line + "\n";
        std::string line = std::string(indent) + other_cells(cells, widths, " ");
        trim_right(line);
        if (!line.empty()) text += line + "\n";
    }
    return text;
}

std::string TextTable::text() const {
    std::vector<std::size_t> widths(columns_.size(), 0);
    for (const auto& cells : rows_)
        for (std::size_t i = 0; i < cells.size(); ++i) widths[i] = std::max(widths[i], text_width(cells[i]));
    std::size_t others = indent.size();
    for (std::size_t i = 1; i < widths.size(); ++i) others += widths[i] + between.size();
    const std::size_t columns = columns_shown();
    const bool fits = columns >= others + std::min(widths[0], fewest_of_first);
    if (!fits) return below_each_other(widths);
    widths[0] = std::min(widths[0], columns > others + fewest_of_first ? columns - others : fewest_of_first);
    return side_by_side(widths);
}

std::string sentence(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    if (!text.empty() && text.back() == '.') return text;
    return text + ".";
}

std::string paragraph(std::string_view first, std::string_view text) {
    const std::size_t columns = columns_shown();
    std::string result, lead(first);
    std::size_t hang = text_width(first);
    if (columns < text_columns && hang + fewest_beside > columns) {
        trim_right(lead);
        result = lead + "\n";
        hang = hang_below;
        lead.assign(hang, ' ');
    }
    const std::size_t room = hang < columns ? columns - hang : std::string::npos;
    for (const std::string& line : broken_at_blanks(for_terminal(text), room)) {
        std::string whole = lead + line;
        trim_right(whole);
        result += whole + "\n";
        lead.assign(hang, ' ');
    }
    return result;
}

}  // namespace baitwright
