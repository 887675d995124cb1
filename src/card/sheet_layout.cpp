#include "card/sheet_layout.h"

#include <algorithm>
#include <utility>

#include "card/section_layout.h"

namespace baitwright {

namespace {

constexpr double margin = 7 * millimetre_pt;
constexpr double largest = 12, smallest = 7.5, step = 0.25;  // points; 7.5 is about 1.3 mm of small letters
constexpr double rounding = 1;  // points between a text as measured and as drawn, all lines together
constexpr double text_width = page_width - 2 * margin;

/// Writes it all, or measures it, and returns how far down the page it reaches.
double flow(Pen& pen, const CardSheet& sheet, double size) {
    const Tagged document(pen, "Document");
    double y = margin;
    y += pen.write("H1", sheet.title, {1.9 * size, Lettering::Weight::bold}, margin, y, text_width).height;
    y += pen.write("P", sheet.subtitle, {size}, margin, y, text_width).height;
    for (const CardSection& section : sheet.sections) y = flow_section(pen, section, {margin, text_width, size}, y);
    if (sheet.foot.empty()) return y;
    y += 0.5 * size;
    pen.line(margin, y, margin + text_width, 1.2);
    y += 0.2 * size;
    return y + pen.write("P", sheet.foot, {0.92 * size}, margin, y, text_width).height;
}

bool fits(Pen& pen, const CardSheet& sheet, double size) {
    return flow(pen, sheet, size) <= page_height - margin - rounding;
}

/// The section whose rows can best be spared and that still has one.
CardSection* most_spare(CardSheet& sheet) {
    CardSection* found = nullptr;
    for (CardSection& section : sheet.sections)
        if (!section.rows.empty() && section.spare_rank > 0 && (!found || section.spare_rank > found->spare_rank))
            found = &section;
    return found;
}

CardRow left_out_row(std::size_t rows, const CardSection& section) {
    CardRow row;
    row.what = "... and " + std::to_string(rows) + (rows == 1 ? " more line" : " more lines") +
               (section.where_else.empty() ? "" : ": " + section.where_else);
    return row;
}

/// The sheet with so many of the section's first rows.
CardSheet shortened(const CardSheet& sheet, std::size_t at, std::size_t kept) {
    CardSheet shorter = sheet;
    CardSection& section = shorter.sections[at];
    const std::size_t left_out = section.rows.size() - kept;
    section.rows.resize(kept);
    section.rows.push_back(left_out_row(left_out, section));
    section.spare_rank = 0;
    return shorter;
}

}  // namespace

FittedSheet fitted(Pen& pen, CardSheet sheet) {
    FittedSheet found;
    pen.use(Pen::Ink::none);
    for (double size = largest; size >= smallest; size -= step)
        if (fits(pen, sheet, size)) return {std::move(sheet), size, 0, true};
    found.letters = smallest;
    while (CardSection* spare = most_spare(sheet)) {
        const std::size_t rows = spare->rows.size();
        const auto at = static_cast<std::size_t>(spare - sheet.sections.data());
        std::size_t kept = 0;
        for (std::size_t tried = rows - 1; kept < tried;) {  // the most rows that fit
            const std::size_t middle = (kept + tried + 1) / 2;
            if (fits(pen, shortened(sheet, at, middle), smallest))
                kept = middle;
            else
                tried = middle - 1;
        }
        found.rows_left_out += rows - kept;
        sheet = shortened(sheet, at, kept);
        if (fits(pen, sheet, smallest)) break;
    }
    found.fits = fits(pen, sheet, smallest);
    found.sheet = std::move(sheet);
    return found;
}

void draw(Pen& pen, const FittedSheet& fitted) {
    pen.use(Pen::Ink::black);
    flow(pen, fitted.sheet, fitted.letters);
}

}  // namespace baitwright
