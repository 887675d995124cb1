#include "report/text_table.h"

#include <algorithm>
#include <cctype>

#include "quantities/plain_words.h"
#include "quantities/unit_table.h"
#include "report/degree_sign.h"

namespace baitwright {

namespace {

constexpr std::string_view indent = "  ", between = "  ";

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

std::string padded(const std::string& cell, std::size_t width, TextTable::Align align) {
    const std::string blanks(width - std::min(width, text_width(cell)), ' ');
    return align == TextTable::Align::left ? cell + blanks : blanks + cell;
}

void trim_right(std::string& line) {
    line.erase(line.find_last_not_of(' ') + 1);
}

}  // namespace

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

std::string TextTable::text() const {
    std::vector<std::size_t> widths(columns_.size(), 0);
    for (const auto& cells : rows_)
        for (std::size_t i = 0; i < cells.size(); ++i) widths[i] = std::max(widths[i], text_width(cells[i]));
    std::size_t others = indent.size();
    for (std::size_t i = 1; i < widths.size(); ++i) others += widths[i] + between.size();
    const std::size_t room = text_columns > others + 12 ? text_columns - others : 12;
    widths[0] = std::min(widths[0], room);
    std::string text;
    for (const auto& cells : rows_) {
        if (cells.empty()) {
            text += std::string(indent) + std::string(others - indent.size() + widths[0], '-') + "\n";
            continue;
        }
        const std::vector<std::string> names = broken_at_blanks(cells[0], widths[0]);
        for (std::size_t n = 0; n < names.size(); ++n) {
            std::string line = std::string(indent) + padded(names[n], widths[0], columns_[0]);
            if (n + 1 == names.size())
                for (std::size_t i = 1; i < cells.size(); ++i)
                    line += std::string(between) + padded(cells[i], widths[i], columns_[i]);
            trim_right(line);
            text += line + "\n";
        }
    }
    return text;
}

std::string sentence(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    if (!text.empty() && text.back() == '.') return text;
    return text + ".";
}

std::string paragraph(std::string_view first, std::string_view text) {
    std::string result;
    std::string lead(first);
    for (const std::string& line : broken_at_blanks(for_terminal(text), text_columns - text_width(first))) {
        std::string whole = lead + line;
        trim_right(whole);
        result += whole + "\n";
        lead.assign(text_width(first), ' ');
    }
    return result;
}

}  // namespace baitwright
