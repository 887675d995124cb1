#pragma once

#include <cstddef>
#include <optional>
#include <set>
#include <string_view>
#include <vector>

#include "files/csv.h"
#include "files/file_faults.h"
#include "files/ingredient_columns.h"

namespace baitwright {

/// A column of one file: what it is, and which cell of a row stands in it.
struct PlacedColumn {
    IngredientColumn is;
    std::size_t cell;
};

/// The row of headings of ingredients as CSV.
class IngredientHeadings {
public:
    /// All that is wrong with it becomes faults. Columns that are not known are left out.
    IngredientHeadings(const CsvRow& row, FileFaults& faults);

    /// False where the cells are parted by something else than commas, so that nothing can be read.
    [[nodiscard]] bool readable() const { return readable_; }
    /// In the order of `ingredient_columns`.
    [[nodiscard]] const std::vector<PlacedColumn>& columns() const { return columns_; }
    [[nodiscard]] std::size_t count() const { return count_; }
    /// The cell below a heading, if the file has it.
    [[nodiscard]] std::optional<std::size_t> cell_under(std::string_view heading) const;
    /// The cells below nothing, which must be empty.
    [[nodiscard]] const std::set<std::size_t>& unheaded() const { return unheaded_; }

private:
    std::size_t count_;
    bool readable_ = true;
    std::vector<PlacedColumn> columns_;
    std::set<std::size_t> unheaded_;
};

}  // namespace baitwright
