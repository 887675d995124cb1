#include "files/ingredient_csv.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "files/csv.h"
#include "files/file_faults.h"
#include "files/formula_guard.h"
#include "files/ingredient_columns.h"
#include "files/ingredient_reader.h"
#include "files/toml_syntax.h"
#include "files/toml_writer.h"
#include "files/utf8.h"
#include "quantities/edit_distance.h"
#include "quantities/number_text.h"
#include "quantities/quantity_text.h"
#include "quantities/quoted.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

using Form = IngredientColumn::Form;

/// A fault that has been told already has no place: nothing more is said of its cell.
constexpr Position told{};

bool blank(const CsvRow& row) {
    return std::all_of(row.cells.begin(), row.cells.end(),
                       [](const std::string& cell) { return trimmed(cell).empty(); });
}

/// The rows as TOML, each on the line where it begins in the CSV, and which of its places stands for which cell. So the
/// rules for ingredients are those of the TOML files, written down once.
class RowsAsToml {
public:
    RowsAsToml() { append("ingredient = ["); }

    void go_to_line(int line) {
        for (; line_ < line; ++line_) text_ += '\n';
        column_ = 1;
    }
    /// What is appended next, up to the next mark, comes from there.
    void mark(Position place) { places_[{line_, column_}] = place; }
    void append(std::string_view piece) {
        text_ += piece;
        column_ += static_cast<int>(letter_count(piece));
    }
    [[nodiscard]] std::string finished() const { return text_ + "]\n"; }

    /// The place in the CSV of a place in the TOML.
    [[nodiscard]] Position origin_of(Position place) const {
        const auto behind = places_.upper_bound({place.line, place.column});
        return behind == places_.begin() ? Position{1, 1} : std::prev(behind)->second;
    }

private:
    std::string text_;
    int line_ = 1, column_ = 1;
    std::map<std::pair<int, int>, Position> places_;
};

/// What the hints for TOML say, in words for a table.
std::string hint_for_cells(const std::string& hint) {
    struct Rewording {
        std::string_view beginning, hint;
    };
    constexpr std::array<Rewording, 3> rewordings{{
        {"add a line", "fill in its cell; a column that is not there yet can be added"},
        {"take the line out", "empty the cell, or give the ingredient another kind"},
        {"write year, month", "write year, month and day, as in 2026-03-01; a spreadsheet leaves it so in a column of text"},
    }};
    for (const Rewording& rewording : rewordings)
        if (hint.substr(0, rewording.beginning.size()) == rewording.beginning) return std::string(rewording.hint);
    return hint;
}

bool is_day(const std::string& text) {
    FileFaults unheard("", "");
    const auto table = text.size() == 10 ? parse_toml("on = " + text, unheard) : std::nullopt;
    return table && (*table)["on"].is_date();
}

std::string words_as_toml(std::string_view cell) {
    std::string list;
    while (!cell.empty()) {
        const auto end = std::min(cell.find(';'), cell.size());
        const std::string_view word = trimmed(cell.substr(0, end));
        if (!word.empty()) list += (list.empty() ? "" : ", ") + toml_quoted(word);
        cell.remove_prefix(std::min(end + 1, cell.size()));
    }
    return "[" + list + "]";
}

/// A number that TOML reads as a real one, however large.
std::string number_as_toml(double number) {
    const std::string text = number_text(number);
    return text.find_first_of(".e") == std::string::npos ? text + ".0" : text;
}

class IngredientCsvReader {
public:
    IngredientCsvReader(LibraryFile& file, FileFaults& faults) : file_(file), faults_(faults) {}

    void read(std::vector<CsvRow> rows) {
        rows.erase(std::remove_if(rows.begin(), rows.end(), blank), rows.end());
        if (rows.empty())
            return faults_.add({1, 1}, "nothing-here", "there is no row of headings in this file",
                               "begin it with the headings name and kind, and those of what you know");
        if (!read_headings(rows.front())) return;
        for (auto row = rows.begin() + 1; row != rows.end(); ++row) write_row(*row);
        read_toml();
    }

private:
    /// A column of this file: what it is, and the how-manieth cell of a row.
    struct Column {
        IngredientColumn is;
        std::size_t cell;
    };

    /// False where the file cannot be read on.
    bool read_headings(const CsvRow& row) {
        if (row.cells.size() == 1 && row.cells[0].find_first_of(";\t") != std::string::npos) {
            faults_.add(row.places[0], "not-commas", "the headings are not parted by commas",
                        "save the table as CSV with commas between its cells");
            return false;
        }
        headings_ = row.cells.size();
        int packs = 0;
        for (std::string& heading : headings_of(row)) packs = std::max(packs, pack_number(heading));
        std::map<std::string, std::size_t> cells;
        for (std::size_t cell = 0; cell < headings_; ++cell) read_heading(row, cell, packs, cells);
        for (IngredientColumn& column : ingredient_columns(packs))
            if (const auto cell = cells.find(column.heading); cell != cells.end())
                columns_.push_back({std::move(column), cell->second});
        for (const char* heading : {"name", "kind"})
            if (!cell_under(heading))
                faults_.add(row.places[0], "missing-column", "there is no column " + quoted(heading),
                            "add it to the headings; every ingredient has a name and a kind");
        return true;
    }

    static std::vector<std::string> headings_of(const CsvRow& row) {
        std::vector<std::string> headings;
        for (const std::string& cell : row.cells) headings.push_back(folded_name(cell));
        return headings;
    }

    void read_heading(const CsvRow& row, std::size_t cell, int packs, std::map<std::string, std::size_t>& cells) {
        const std::string heading = folded_name(row.cells[cell]);
        if (heading.empty()) return void(without_heading_.insert(cell));
        std::vector<std::string> known;
        for (const IngredientColumn& column : ingredient_columns(std::max(packs, 1))) known.push_back(column.heading);
        if (std::find(known.begin(), known.end(), heading) == known.end()) {
            std::string hint = did_you_mean(heading, known);
            if (hint.empty()) hint = "take the column out, or put what it says into the column note";
            return faults_.add(row.places[cell], "unknown-column", quoted(row.cells[cell]) + " is not a heading of ingredients",
                               hint);
        }
        if (!cells.emplace(heading, cell).second)
            faults_.add(row.places[cell], "set-twice", quoted(heading) + " heads two columns", "keep one of the two");
    }

    [[nodiscard]] std::optional<std::size_t> cell_under(std::string_view heading) const {
        for (const Column& column : columns_)
            if (column.is.heading == heading) return column.cell;
        return std::nullopt;
    }

    bool fits_headings(const CsvRow& row) {
        if (row.cells.size() == headings_) return true;
        const std::size_t first_surplus = std::min(headings_, row.cells.size() - 1);
        faults_.add(row.places[first_surplus], "ragged-row",
                    "this row has " + std::to_string(row.cells.size()) + " cells, and there are " +
                        std::to_string(headings_) + " headings",
                    "a cell with a comma in it stands in quotes");
        return false;
    }

    void write_row(const CsvRow& row) {
        if (!fits_headings(row)) return;
        for (const std::size_t cell : without_heading_)
            if (!trimmed(row.cells[cell]).empty())
                faults_.add(row.places[cell], "no-heading", "this cell has no heading above it",
                            "give its column a heading, or empty it");
        rows_[row.line] = &row;
        toml_.go_to_line(row.line);
        toml_.mark(row.places.front());
        toml_.append("{ ");
        write_missing_columns(row);
        int pack = 0;
        for (const Column& column : columns_) write_cell(row, column, pack);
        toml_.append(pack > 0 ? " } ] }, " : " }, ");
    }

    /// That a column is missing was said once, and need not be said of each row.
    void write_missing_columns(const CsvRow& row) {
        if (!cell_under("name")) write_value(told, "name", toml_quoted("row " + std::to_string(row.line)), "");
        if (!cell_under("kind")) write_value(told, "kind", "\"\"", cell_under("name") ? "" : ", ");
        between_ = columns_.empty() || cell_under("kind") ? between_ : ", ";
    }

    void write_value(Position place, std::string_view key, std::string_view value, std::string_view before) {
        toml_.append(before);
        toml_.mark(place);
        toml_.append(key);
        toml_.append(" = ");
        toml_.append(value);
    }

    void write_cell(const CsvRow& row, const Column& column, int& pack);
    void read_toml();

    LibraryFile& file_;
    FileFaults& faults_;
    std::size_t headings_ = 0;
    std::set<std::size_t> without_heading_;
    std::vector<Column> columns_;  ///< in the order of `ingredient_columns`
    std::map<int, const CsvRow*> rows_;
    RowsAsToml toml_;
    std::string between_;
};

}  // namespace

}  // namespace baitwright
