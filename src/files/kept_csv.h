#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/kept_tables.h"
#include "files/csv.h"
#include "files/file_faults.h"

/// The tables that are kept (`bait/kept_tables.h`) as RFC 4180 text: a row of headings, then a row each.
namespace baitwright {

std::string kept_headings(const KeptTable& table);
std::string kept_csv_row(const KeptTable& table, const KeptRow& row);

/// Reads such a text row by row, its columns in any order, as a spreadsheet saves it: with LF or CRLF, with empty rows
/// and empty columns behind. What is wrong becomes a fault at its cell. The text must outlive it.
class KeptCsvReader {
public:
    KeptCsvReader(const KeptTable& table, std::string_view text, FileFaults& faults);

    /// Goes to the next row that is free of faults, into `row`; false after the last.
    bool next(KeptRow& row);

    /// Says what is wrong with the row that `next` gave last, at the cell of a column.
    void fault(std::size_t column, std::string code, std::string message, std::string hint);

private:
    bool read_headings();
    bool take_row();
    bool is_blank() const;
    void read_cells(KeptRow& row);
    [[nodiscard]] bool fits() const;

    const KeptTable& table_;
    FileFaults& faults_;
    CsvRows rows_;
    CsvRow current_{};
    std::vector<std::size_t> cells_;  ///< of each column
    std::size_t headed_ = 0;          ///< cells up to the last heading
    bool carriage_returns_ = false;   ///< lines end in CRLF, and so do those in cells
    bool readable_ = false;
};

}  // namespace baitwright
