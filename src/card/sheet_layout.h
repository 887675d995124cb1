#pragma once

#include <cstddef>

#include "card/pen.h"
#include "report/card_sheet.h"

namespace baitwright {

/// A5 upright (ISO 216: 148 mm x 210 mm), in points of 1/72 inch.
inline constexpr double millimetre_pt = 72 / 25.4;
inline constexpr double page_width = 148 * millimetre_pt, page_height = 210 * millimetre_pt;

/// How a sheet was made to fit its page.
struct FittedSheet {
    CardSheet sheet;  ///< with the rows that are left, and lines that say where others are
    double letters = 0;
    std::size_t rows_left_out = 0;
    bool fits = true;  ///< false only where headings and text that cannot be left out already fill the page
};

/// The largest letters, down to the smallest that wet eyes can read, in which it fits on the page; then as many rows of
/// the sections that can best be spared as must go.
FittedSheet fitted(Pen& pen, CardSheet sheet);

/// Draws it.
void draw(Pen& pen, const FittedSheet& fitted);

}  // namespace baitwright
