#pragma once

#include <optional>
#include <vector>

#include "card/section_layout.h"

namespace baitwright {

/// Where sections may stand: from below the head, which the first page has larger, down to above the foot; in points.
struct PageRoom {
    double top_of_first, top_of_others, bottom;
};

enum class PageBreak { anywhere, between_sides };

/// The sections parted into pages: between rows anywhere, a heading never without a row, what goes on under the same
/// heading, "continued"; or the bench on one page and the water on the next. Nothing where one row alone does not fit.
std::optional<std::vector<std::vector<CardSection>>> paged(Pen& pen, const std::vector<CardSection>& sections,
                                                           const Column& column, const PageRoom& room, PageBreak at);

}  // namespace baitwright
