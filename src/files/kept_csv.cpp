#include "files/kept_csv.h"

#include <algorithm>

#include "files/formula_guard.h"
#include "files/kept_cells.h"
#include "files/utf8.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

constexpr std::size_t no_cell = static_cast<std::size_t>(-1);

std::vector<std::string> kept_heading_texts(const KeptTable& table) {
    std::vector<std::string> headings;
    headings.reserve(table.columns.size());
    for (const KeptColumn& column : table.columns) headings.push_back(column.heading);
    return headings;
}

std::string with_line_feeds(const std::string& cell) {
    std::string text;
    for (std::size_t i = 0; i < cell.size(); ++i)
        if (cell[i] != '\r' || cell.substr(i + 1, 1) != "\n") text += cell[i];
    return text;
}

}  // namespace

std::string kept_headings(const KeptTable& table) {
    return csv_row(kept_heading_texts(table));
}

std::string kept_csv_row(const KeptTable& table, const KeptRow& row) {
    std::vector<std::string> cells;
    cells.reserve(table.columns.size());
    std::size_t value = 0;
    for (const KeptColumn& column : table.columns) {
        cells.push_back(kept_cell(column, &row[value]));
        value += values_in(column.form);
    }
    return csv_row(cells);
}

KeptCsvReader::KeptCsvReader(const KeptTable& table, std::string_view text, FileFaults& faults)
    : table_(table), faults_(faults), rows_(text), cells_(table.columns.size(), no_cell) {
    const auto first_end = text.find('\n');
    carriage_returns_ = first_end != std::string_view::npos && first_end > 0 && text[first_end - 1] == '\r';
    if (const auto bad = first_bad_byte(text))
        faults_.add(place_of_byte(text, *bad), "not-utf-8", "the file is not in UTF-8 from here on",
                    "save it as \"CSV UTF-8\" in the spreadsheet");
    else
        readable_ = read_headings();
}

bool KeptCsvReader::take_row() {
    try {
        while (rows_.next(current_))
            if (!is_blank()) return true;
    } catch (const InputError& error) {
        for (const Fault& fault : error.faults())
            faults_.add({fault.line, fault.column}, fault.code, fault.message, fault.hint);
    }
    return false;
}

bool KeptCsvReader::is_blank() const {
    return std::all_of(current_.cells.begin(), current_.cells.end(),
                       [](const std::string& cell) { return trimmed(cell).empty(); });
}

bool KeptCsvReader::read_headings() {
    if (!take_row()) {
        faults_.add({1, 1}, "nothing-here", "there is no row of headings in this file",
                    "its headings are: " + kept_headings(table_).substr(0, kept_headings(table_).size() - 1));
        return false;
    }
    const std::vector<std::string> known = kept_heading_texts(table_);
    if (current_.cells.size() == 1 && known.size() > 1 && current_.cells[0].find_first_of(";\t") != std::string::npos) {
        faults_.add(current_.places[0], "not-commas", "the headings are not parted by commas",
                    "save the table as CSV with commas between its cells");
        return false;
    }
    const std::size_t faults_before = faults_.count();
    for (std::size_t cell = 0; cell < current_.cells.size(); ++cell) {
        const std::string heading = folded_name(unguarded(current_.cells[cell]));
        if (heading.empty()) continue;
        headed_ = cell + 1;
        const auto column = std::find_if(known.begin(), known.end(),
                                         [&](const std::string& one) { return folded_name(one) == heading; });
        if (column == known.end()) {
            const std::string near = did_you_mean(heading, known);
            faults_.add(current_.places[cell], "unknown-column", in_quotes(heading) + " is no heading of this table",
                        near.empty() ? "take the column out" : near);
            continue;
        }
        std::size_t& place = cells_[static_cast<std::size_t>(column - known.begin())];
        if (place != no_cell)
            faults_.add(current_.places[cell], "set-twice", in_quotes(heading) + " heads two columns",
                        "keep one of the two");
        place = cell;
    }
    for (std::size_t column = 0; column < known.size(); ++column)
        if (cells_[column] == no_cell)
            faults_.add(current_.places[0], "missing-column", "there is no column " + in_quotes(known[column]),
                        "add it to the headings");
    return faults_.count() == faults_before;
}

bool KeptCsvReader::fits() const {
    const std::size_t cells = current_.cells.size();
    for (std::size_t cell = headed_; cell < cells; ++cell) {
        if (trimmed(current_.cells[cell]).empty()) continue;
        faults_.add(current_.places[cell], "no-heading", "this cell has no heading above it",
                    "a cell with a comma in it stands in quotes");
        return false;
    }
    if (cells >= headed_) return true;
    faults_.add(
        current_.places.back(), "ragged-row",
        "this row has " + std::to_string(cells) + " cells, and there are " + std::to_string(headed_) + " headings",
        "give it a cell for each heading, be it an empty one");
    return false;
}

void KeptCsvReader::read_cells(KeptRow& row) {
    std::size_t value = 0;
    row.clear();
    for (const KeptColumn& column : table_.columns) row.resize(row.size() + values_in(column.form));
    for (std::size_t i = 0; i < table_.columns.size(); ++i) {
        const KeptColumn& column = table_.columns[i];
        const std::string cell = unguarded(current_.cells[cells_[i]]);
        try {
            read_kept_cell(column, carriage_returns_ ? with_line_feeds(cell) : cell, &row[value]);
        } catch (const InputError& error) {
            for (const Fault& one : error.faults())
                fault(i, one.code, "'" + column.heading + "': " + one.message, one.hint);
        }
        value += values_in(column.form);
    }
}

bool KeptCsvReader::next(KeptRow& row) {
    while (readable_ && take_row()) {
        const std::size_t faults_before = faults_.count();
        if (fits()) read_cells(row);
        if (faults_.count() == faults_before) return true;
    }
    return false;
}

void KeptCsvReader::fault(std::size_t column, std::string code, std::string message, std::string hint) {
    faults_.add(current_.places[cells_[column]], std::move(code), std::move(message), std::move(hint));
}

}  // namespace baitwright
