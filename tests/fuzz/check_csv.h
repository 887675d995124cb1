#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "files/csv.h"
#include "files/formula_guard.h"
#include "files/ingredient_csv.h"
#include "files/same_record.h"
#include "fuzz/check_faults.h"

/// What the readers of CSV promise of any text.
namespace baitwright::fuzz {

/// Rows are read back as they were from what is written of them.
inline std::string broken_rows(std::string_view text) {
    return wrong_with([&]() -> std::string {
        for (const CsvRow& row : read_csv(text)) {
            if (row.cells.size() != row.places.size()) return "a cell without a place";
            const std::vector<CsvRow> back = read_csv(csv_row(row.cells));
            if (back.size() != 1 || back[0].cells.size() != row.cells.size()) return "a row was not read back as one";
            for (std::size_t i = 0; i < row.cells.size(); ++i)
                if (unguarded(back[0].cells[i]) != row.cells[i]) return "a cell changed when written";
        }
        return {};
    });
}

inline std::string broken_ingredients(std::string_view text) {
    return wrong_with([&]() -> std::string {
        const LibraryFile file = read_ingredient_csv(text, "a.csv");
        if (std::string lack = lacking_in_file(file.faults); !lack.empty()) return lack;
        if (file.ingredients.empty()) return {};
        const LibraryFile back = read_ingredient_csv(csv_text(file.ingredients), "b.csv");
        if (!back.faults.empty()) return "what was written is refused: " + back.faults[0].message;
        if (back.ingredients.size() != file.ingredients.size()) return "an ingredient was lost when written";
        for (std::size_t i = 0; i < file.ingredients.size(); ++i)
            if (const auto key = first_difference(file.ingredients[i], back.ingredients[i]); !key.empty())
                return key + " changed when written";
        return {};
    });
}

inline std::string broken_csv(std::string_view text) {
    const std::string broken = broken_rows(text);
    return broken.empty() ? broken_ingredients(text) : broken;
}

}  // namespace baitwright::fuzz
