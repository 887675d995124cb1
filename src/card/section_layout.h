#pragma once

#include <vector>

#include "card/pen.h"
#include "report/card_sheet.h"

namespace baitwright {

/// Where on the page text stands: its left edge, its width, and the size of plain letters, in points.
struct Column {
    double x, width, size;
};

/// How much room the heading takes with the gaps around it, and each row with what is below it.
struct SectionHeights {
    double heading = 0;
    std::vector<double> rows;
};

/// Of a section that is not in two columns. Fewer of its rows take no more room.
SectionHeights heights_of(Pen& pen, const CardSection& section, const Column& column);

/// Writes the section from `y` down, or measures it, and returns where it ends.
double flow_section(Pen& pen, const CardSection& section, const Column& column, double y);

}  // namespace baitwright
