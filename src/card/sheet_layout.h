#pragma once

#include <cstddef>
#include <vector>

#include "card/pen.h"
#include "report/card_sheet.h"

namespace baitwright {

/// A5 upright (ISO 216: 148 mm x 210 mm), in points of 1/72 inch.
inline constexpr double millimetre_pt = 72 / 25.4;
inline constexpr double page_width = 148 * millimetre_pt, page_height = 210 * millimetre_pt;
inline constexpr double page_margin = 7 * millimetre_pt;

/// Points. Below 9 nobody reads a sheet in the rain: a second page comes before that.
inline constexpr double largest_letters = 12, smallest_letters = 9, letters_step = 0.25;

/// How a sheet was made to fit its pages.
struct FittedSheet {
    CardSheet sheet;  ///< with what is left of its sections
    double letters = 0;
    std::vector<std::vector<CardSection>> pages;  ///< what stands on each; a section may go on from the one before
    std::size_t rows_left_out = 0;
    bool fits = true;  ///< false only where a single line, or the names alone, fill more than a page
};

/// The largest letters in which it fits on one page, whole or with cautions and doubled weights cut short; else two
/// pages, with nothing cut short if they hold it; else as many as it takes.
FittedSheet fitted(Pen& pen, const CardSheet& sheet);

/// Draws one of its pages.
void draw_page(Pen& pen, const FittedSheet& fitted, std::size_t page);

}  // namespace baitwright
