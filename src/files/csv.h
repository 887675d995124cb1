#pragma once

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

/// Reads RFC 4180 text: quoted cells, doubled quotes, line breaks inside quotes, CRLF or LF, an optional byte order
/// mark. Throws InputError "unclosed-quote" or "stray-quote" with line and column.
std::vector<CsvRow> read_csv(std::string_view text);

/// One row with a line end (LF), quoting where needed, each cell guarded against spreadsheets that would run it
/// (`formula_guard.h`; `unguarded` gives it back). All CSV that leaves the program is written by this.
std::string csv_row(const std::vector<std::string>& cells);

}  // namespace baitwright
