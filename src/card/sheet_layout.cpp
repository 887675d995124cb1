#include "card/sheet_layout.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "card/page_break.h"
#include "card/section_layout.h"

namespace baitwright {

namespace {

using Gives = CardSection::Gives;
using Pages = std::vector<std::vector<CardSection>>;

constexpr double rounding = 1;  // points between a text as measured and as drawn, all lines together
constexpr double text_width = page_width - 2 * page_margin;

/// Writes title and what stands below it, or measures them, and returns where they end.
double flow_head(Pen& pen, const CardSheet& sheet, double size, std::size_t page) {
    double y = page_margin;
    const double title = page == 0 ? 1.9 : 1.3;
    y += pen.write("H1", sheet.title, {title * size, Lettering::Weight::bold}, page_margin, y, text_width).height;
    if (page > 0) return y;
    return y + pen.write("P", sheet.subtitle, {size}, page_margin, y, text_width).height;
}

std::string foot_words(const CardSheet& sheet, std::size_t page, std::size_t pages) {
    if (pages == 1) return sheet.foot;
    const std::string which = "Page " + std::to_string(page + 1) + " of " + std::to_string(pages) + ".";
    return page + 1 == pages ? which + " " + sheet.foot : which;
}

double flow_foot(Pen& pen, const std::string& words, double size, double y) {
    if (words.empty()) return y;
    y += 0.5 * size;
    pen.line(page_margin, y, page_margin + text_width, 1.2);
    y += 0.2 * size;
    return y + pen.write("P", words, {0.92 * size}, page_margin, y, text_width).height;
}

/// The room for sections on each page. Every page keeps room for the foot, for any may be the last.
PageRoom room_of(Pen& pen, const CardSheet& sheet, double size, std::size_t pages) {
    const double bottom = page_height - page_margin - rounding,
                 foot = flow_foot(pen, foot_words(sheet, pages - 1, pages), size, 0);
    return {flow_head(pen, sheet, size, 0), flow_head(pen, sheet, size, 1), bottom - foot};
}

/// The sheet with these sections cut short.
CardSheet cut_short(CardSheet sheet, Gives up_to) {
    for (CardSection& section : sheet.sections) {
        if (section.gives == Gives::never || section.gives > up_to) continue;
        section.rows = section.in_short;
    }
    return sheet;
}

std::size_t left_out_of(const CardSheet& sheet, Gives up_to) {
    std::size_t rows = 0;
    for (const CardSection& section : sheet.sections)
        if (section.gives != Gives::never && section.gives <= up_to) rows += section.left_out;
    return rows;
}

/// One way to make it fit.
struct Attempt {
    std::size_t pages;
    Gives up_to;
    PageBreak at;
};

constexpr std::array<Attempt, 8> attempts{{{1, Gives::never, PageBreak::anywhere},
                                           {1, Gives::cautions_in_full, PageBreak::anywhere},
                                           {1, Gives::doubled_weights, PageBreak::anywhere},
                                           {2, Gives::never, PageBreak::between_sides},
                                           {2, Gives::never, PageBreak::anywhere},
                                           {2, Gives::cautions_in_full, PageBreak::anywhere},
                                           {2, Gives::doubled_weights, PageBreak::anywhere},
                                           {2, Gives::jobs, PageBreak::anywhere}}};

std::optional<Pages> pages_in(Pen& pen, const CardSheet& sheet, const Attempt& attempt, double size) {
    const Column column{page_margin, text_width, size};
    auto pages = paged(pen, sheet.sections, column, room_of(pen, sheet, size, attempt.pages), attempt.at);
    if (pages && attempt.pages > 0 && pages->size() > attempt.pages) return std::nullopt;
    return pages;
}

/// In the largest letters that do; larger ones take no less room, so half of them are passed over at each look.
std::optional<FittedSheet> fitted_by(Pen& pen, const CardSheet& whole, const Attempt& attempt) {
    const CardSheet sheet = cut_short(whole, attempt.up_to);
    const auto size_of = [](int step) { return smallest_letters + step * letters_step; };
    std::optional<Pages> found = pages_in(pen, sheet, attempt, smallest_letters);
    if (!found) return std::nullopt;
    int low = 0;
    for (int high = static_cast<int>((largest_letters - smallest_letters) / letters_step); low < high;) {
        const int middle = (low + high + 1) / 2;
        if (auto pages = pages_in(pen, sheet, attempt, size_of(middle))) {
            found = std::move(pages);
            low = middle;
        } else {
            high = middle - 1;
        }
    }
    return FittedSheet{sheet, size_of(low), std::move(*found), left_out_of(whole, attempt.up_to), true};
}

/// As many pages as it takes, in the smallest letters, with nothing left out.
FittedSheet on_many_pages(Pen& pen, const CardSheet& sheet) {
    const Column column{page_margin, text_width, smallest_letters};
    const PageRoom room = room_of(pen, sheet, smallest_letters, 999);
    auto pages = paged(pen, sheet.sections, column, room, PageBreak::anywhere);
    const bool fits = pages.has_value();
    return {sheet, smallest_letters, fits ? std::move(*pages) : Pages{}, 0, fits};
}

}  // namespace

FittedSheet fitted(Pen& pen, const CardSheet& sheet) {
    pen.use(Pen::Ink::none);
    for (const Attempt& attempt : attempts)
        if (auto found = fitted_by(pen, sheet, attempt)) return std::move(*found);
    return on_many_pages(pen, sheet);
}

void draw_page(Pen& pen, const FittedSheet& fitted, std::size_t page) {
    pen.use(Pen::Ink::black);
    const Tagged part(pen, "Part");
    const double size = fitted.letters;
    double y = flow_head(pen, fitted.sheet, size, page);
    for (const CardSection& section : fitted.pages[page])
        y = flow_section(pen, section, {page_margin, text_width, size}, y);
    flow_foot(pen, foot_words(fitted.sheet, page, fitted.pages.size()), size, y);
}

}  // namespace baitwright
