#include "files/ingredient_csv.h"

#include <algorithm>
#include <array>
#include <map>

#include "files/formula_guard.h"
#include "files/ingredient_headings.h"
#include "files/ingredient_reader.h"
#include "files/rows_as_toml.h"
#include "files/toml_syntax.h"
#include "files/toml_writer.h"
#include "files/utf8.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/quantity_text.h"

namespace baitwright {

namespace {

using Form = IngredientColumn::Form;

/// The place of what had its fault already: nothing more is said of it.
constexpr Position told{};

bool is_blank(const CsvRow& row) {
    return std::all_of(row.cells.begin(), row.cells.end(),
                       [](const std::string& cell) { return trimmed(cell).empty(); });
}

/// What the hints for TOML say, in words for a table.
std::string hint_for_cells(const std::string& hint) {
    struct Rewording {
        std::string_view beginning, hint;
    };
    constexpr std::array<Rewording, 3> rewordings{{
        {"add a line", "fill in its cell; a column that is not there yet can be added"},
        {"take the line out", "empty the cell, or give the ingredient another kind"},
        {"write year, month", "write it as in 2026-03-01; in a column of text a spreadsheet leaves it so"},
    }};
    for (const Rewording& rewording : rewordings)
        if (hint.substr(0, rewording.beginning.size()) == rewording.beginning) return std::string(rewording.hint);
    return hint;
}

/// What a message is about: it begins with that in quotes.
std::string_view key_in(std::string_view message) {
    const auto end = message.find('\'', 1);
    return !message.empty() && message[0] == '\'' && end != std::string_view::npos ? message.substr(1, end - 1)
                                                                                   : std::string_view{};
}

bool is_day(const std::string& text) {
    FileFaults unheard("", "");
    const auto table = text.size() == 10 ? parse_toml("on = " + text, unheard) : std::nullopt;
    return table && table->get("on")->is_date();
}

std::string list_as_toml(std::string_view cell) {
    std::string list;
    while (!cell.empty()) {
        const auto end = std::min(cell.find(';'), cell.size());
        const std::string_view word = trimmed(cell.substr(0, end));
        if (!word.empty()) list += (list.empty() ? "" : ", ") + toml_quoted(word);
        cell.remove_prefix(std::min(end + 1, cell.size()));
    }
    return "[" + list + "]";
}

/// TOML would take a whole number that is very large for a mistake.
std::string number_as_toml(double number) {
    const std::string text = number_text(number);
    return text.find_first_of(".e") == std::string::npos ? text + ".0" : text;
}

/// Lays the rows of a file out as TOML, has them read as such, and brings the faults back to their cells.
class IngredientCsvReader {
public:
    IngredientCsvReader(const IngredientHeadings& headings, FileFaults& faults)
        : headings_(headings), faults_(faults) {}

    void take(const CsvRow& row) {
        if (!fits_headings(row)) return;
        check_unheaded(row);
        rows_[row.line] = &row;
        toml_.begin_row(row.line, row.places.front());
        // That a column is missing was said once, for all rows.
        if (!headings_.cell_under("name")) toml_.entry(told, "name", toml_quoted("row " + std::to_string(row.line)));
        if (!headings_.cell_under("kind")) toml_.entry(told, "kind", "''");
        int pack = 0;
        for (const PlacedColumn& column : headings_.columns()) take_cell(row, column, pack);
        toml_.end_row();
    }

    std::vector<Ingredient> ingredients() {
        const std::string text = toml_.toml();
        FileFaults found(text, "");
        std::vector<Ingredient> ingredients;
        if (const auto root = parse_toml(text, found)) {
            EntryNames names;
            TableReader(*root, {1, 1}, "this file", found)
                .each_block("ingredient", "an ingredient", [&](TableReader& row) {
                    if (auto ingredient = read_ingredient(row, names)) ingredients.push_back(std::move(*ingredient));
                });
        }
        for (const Fault& fault : found.in_file_order()) bring_back(fault);
        return ingredients;
    }

private:
    bool fits_headings(const CsvRow& row) {
        if (row.cells.size() == headings_.count()) return true;
        faults_.add(row.places[std::min(headings_.count(), row.cells.size() - 1)], "ragged-row",
                    "this row has " + std::to_string(row.cells.size()) + " cells, and there are " +
                        std::to_string(headings_.count()) + " headings",
                    "a cell with a comma in it stands in quotes");
        return false;
    }

    void check_unheaded(const CsvRow& row) {
        for (const std::size_t cell : headings_.unheaded())
            if (!trimmed(row.cells[cell]).empty())
                faults_.add(row.places[cell], "no-heading", "this cell has no heading above it",
                            "give its column a heading, or empty it");
    }

    void take_cell(const CsvRow& row, const PlacedColumn& column, int& pack) {
        const std::string cell = unguarded(row.cells[column.cell]);
        const std::string plain(trimmed(cell));
        if (column.is.form == Form::text ? cell.empty() : plain.empty()) return;
        const Position place = row.places[column.cell];
        if (stands_alone(row, column.is, place)) return;
        if (column.is.pack > pack) toml_.begin_pack(place);
        pack = column.is.pack;
        switch (column.is.form) {
            case Form::text:
                return toml_.entry(place, column.is.key, toml_quoted(cell));
            case Form::value:
                return toml_.entry(place, column.is.key, toml_quoted(plain));
            case Form::number:
                return take_number(place, column.is.key, plain);
            case Form::date:
                return toml_.entry(place, column.is.key, is_day(plain) ? plain : toml_quoted(plain));
            case Form::words:
                return toml_.entry(place, column.is.key, list_as_toml(plain));
        }
    }

    /// A spread or a source of nothing.
    bool stands_alone(const CsvRow& row, const IngredientColumn& column, Position place) {
        if (column.companion_of.empty()) return false;
        const auto value = headings_.cell_under(column.companion_of);
        if (value && !trimmed(row.cells[*value]).empty()) return false;
        faults_.add(place, "missing-value",
                    in_quotes(column.heading) + " is stated, but not " + in_quotes(column.companion_of),
                    "state both, or empty this cell");
        return true;
    }

    void take_number(Position place, const std::string& key, const std::string& cell) {
        try {
            toml_.entry(place, key, number_as_toml(parse_number(cell)));
        } catch (const InputError& error) {
            faults_.add(place, error);
            toml_.entry(told, key, "''");
        }
    }

    void bring_back(const Fault& fault) {
        Position place = toml_.origin_of({fault.line, fault.column});
        if (place.line == told.line) return;
        // What is missing has a cell all the same, where its column is there.
        if (const auto cell = headings_.cell_under(key_in(fault.message)); cell && fault.code == "missing-value")
            place = rows_.at(fault.line)->places[*cell];
        faults_.add(place, fault.code, fault.message, hint_for_cells(fault.hint));
    }

    const IngredientHeadings& headings_;
    FileFaults& faults_;
    RowsAsToml toml_;
    std::map<int, const CsvRow*> rows_;
};

/// The rows that are not empty; none, and a fault, where the text is no CSV.
std::vector<CsvRow> rows_of(std::string_view text, FileFaults& faults) {
    if (const auto bad = first_bad_byte(text)) {
        faults.add(place_of_byte(text, *bad), "not-utf-8", "the file is not in UTF-8 from here on",
                   "save it as \"CSV UTF-8\" in the spreadsheet");
        return {};
    }
    try {
        std::vector<CsvRow> rows = read_csv(text);
        rows.erase(std::remove_if(rows.begin(), rows.end(), is_blank), rows.end());
        if (rows.empty())
            faults.add({1, 1}, "nothing-here", "there is no row of headings in this file",
                       "begin it with the headings name and kind, and those of what you know");
        return rows;
    } catch (const InputError& error) {
        for (const Fault& fault : error.faults())
            faults.add({fault.line, fault.column}, fault.code, fault.message, fault.hint);
        return {};
    }
}

}  // namespace

LibraryFile read_ingredient_csv(std::string_view text, std::string file_name) {
    LibraryFile file;
    file.name = std::move(file_name);
    FileFaults faults(text, file.name);
    const std::vector<CsvRow> rows = rows_of(text, faults);
    if (!rows.empty()) {
        const IngredientHeadings headings(rows.front(), faults);
        IngredientCsvReader reader(headings, faults);
        if (headings.readable())
            std::for_each(rows.begin() + 1, rows.end(), [&](const CsvRow& row) { reader.take(row); });
        file.ingredients = reader.ingredients();
    }
    file.faults = faults.in_file_order();
    return file;
}

}  // namespace baitwright
