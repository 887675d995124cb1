#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "report/shown_columns.h"

namespace baitwright {

/// A table in plain text: the first column to the left, the others to the right unless told otherwise, two blanks
/// between, indented by two. The first column is broken over lines where the whole would pass `columns_shown`; where
/// that does not help, it stands on lines of its own, above the others.
class TextTable {
public:
    enum class Align { left, right };

    explicit TextTable(std::vector<Align> columns) : columns_(std::move(columns)) {}
    /// A row with fewer cells leaves the rest empty.
    void row(std::vector<std::string> cells);
    /// A line of dashes under the numbers.
    void rule();
    [[nodiscard]] std::string text() const;
    [[nodiscard]] const std::vector<Align>& columns() const { return columns_; }
    /// An empty row is a rule.
    [[nodiscard]] const std::vector<std::vector<std::string>>& rows() const { return rows_; }

private:
    [[nodiscard]] std::string other_cells(const std::vector<std::string>& cells, const std::vector<std::size_t>& widths,
                                          std::string_view between) const;
    [[nodiscard]] std::string side_by_side(const std::vector<std::size_t>& widths) const;
    [[nodiscard]] std::string below_each_other(const std::vector<std::size_t>& widths) const;

    std::vector<Align> columns_;
    std::vector<std::vector<std::string>> rows_;  // an empty row is a rule
};

/// Columns that a text takes on a terminal: accents and wide letters counted right.
std::size_t text_width(std::string_view text);

/// Lines of at most so many columns, but for a word that is longer; a number keeps its unit.
std::vector<std::string> broken_at_blanks(std::string_view text, std::size_t width);

/// A paragraph broken at blanks so that no line passes `columns_shown`; the first line starts with `first`, the others
/// with as many blanks. On a narrow terminal that leaves no room beside `first` it begins below it. Ends with a line
/// end.
std::string paragraph(std::string_view first, std::string_view text);

/// With a capital and a full stop, where it has none yet.
std::string sentence(std::string text);

}  // namespace baitwright
