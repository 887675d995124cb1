#pragma once

#include <cstddef>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "files/position.h"

namespace baitwright {

/// One row of an RFC 4180 file, with the line on which it begins and the places on which its cells begin.
struct CsvRow {
    int line;
    std::vector<std::string> cells;
    std::vector<Position> places;
};

/// Reads RFC 4180 text row by row: quoted cells, doubled quotes, line breaks inside quotes, CRLF or LF, an optional
/// byte order mark. Throws InputError "unclosed-quote", "stray-quote" or "too-large" with line and column. The text
/// must outlive it.
class CsvRows {
public:
    explicit CsvRows(std::string_view text, std::size_t most_cells = std::numeric_limits<std::size_t>::max());

    /// Goes to the next row, into `row`; false after the last.
    bool next(CsvRow& row);

private:
    void begin_line();
    Position place();
    [[nodiscard]] bool at_cell_end() const;
    bool take(std::string_view word);
    std::string take_cell();
    std::string take_plain();
    std::string take_quoted(std::size_t start);

    std::string_view text_;
    std::size_t most_cells_;
    std::size_t at_;
    std::size_t cells_ = 0;
    int line_ = 1;
    int column_ = 1;  ///< of the byte `counted_`
    std::size_t counted_;
};

/// All rows at once, at most 2,000,000 cells.
std::vector<CsvRow> read_csv(std::string_view text);

/// One row with a line end (LF), quoting where needed, each cell guarded against spreadsheets that would run it
/// (`formula_guard.h`; `unguarded` gives it back). All CSV that leaves the program is written by this.
std::string csv_row(const std::vector<std::string>& cells);

}  // namespace baitwright
