#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace baitwright {

/// The widest line we print.
inline constexpr std::size_t text_columns = 80;

/// A table in plain text: the first column to the left, the others to the right unless told otherwise, two blanks
/// between, indented by two. The first column is broken over lines where the whole would pass `text_columns`.
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
    std::vector<Align> columns_;
    std::vector<std::vector<std::string>> rows_;  // an empty row is a rule
};

/// Columns that a text takes on a terminal: accents and wide letters counted right.
std::size_t text_width(std::string_view text);

/// A paragraph broken at blanks so that no line passes `text_columns`; the first line starts with `first`, the others
/// with as many blanks. Ends with a line end.
std::string paragraph(std::string_view first, std::string_view text);

/// With a capital and a full stop, where it has none yet.
std::string sentence(std::string text);

}  // namespace baitwright
