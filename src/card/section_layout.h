#pragma once

#include "card/pen.h"
#include "report/card_sheet.h"

namespace baitwright {

/// Where on the page text stands: its left edge, its width, and the size of plain letters, in points.
struct Column {
    double x, width, size;
};

/// Writes the section from `y` down, or measures it, and returns where it ends.
double flow_section(Pen& pen, const CardSection& section, const Column& column, double y);

}  // namespace baitwright
