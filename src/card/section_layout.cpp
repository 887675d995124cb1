#include "card/section_layout.h"

#include <algorithm>
#include <vector>

namespace baitwright {

namespace {

constexpr double gap = 0.6;  // between what stands in one line, in letter sizes
constexpr double between_rows = 0.18;
constexpr double box_side = 0.95;
constexpr double hairline = 0.3;  // points: leads the eye from a name to its amount
constexpr double column_gap = 1.6;

/// How wide each piece of a row is, so that those of a section stand below each other.
struct Widths {
    double tick = 0, when = 0, what = 0, amount = 0, also = 0;
};

Lettering plain(const Column& column) {
    return {column.size};
}
Lettering bold(const Column& column, Lettering::Side side = Lettering::Side::left) {
    return {column.size, Lettering::Weight::bold, side};
}

double with_gap(double width, const Column& column) {
    return width > 0 ? width + gap * column.size : 0;
}

Widths widths_of(Pen& pen, const CardSection& section, const Column& column) {
    Widths widths;
    for (const CardRow& row : section.rows) {
        if (row.tick == CardRow::Tick::box) widths.tick = box_side * column.size;
        widths.when = std::max(widths.when, pen.measure(row.when, bold(column)).width);
        widths.amount = std::max(widths.amount, pen.measure(row.amount, bold(column)).width);
        widths.also = std::max(widths.also, pen.measure(row.also, plain(column)).width);
    }
    const double rounding = 0.5;  // so that a measured width never breaks its own text
    widths.tick = with_gap(widths.tick, column);
    widths.when = with_gap(widths.when > 0 ? widths.when + rounding : 0, column);
    widths.amount = with_gap(widths.amount > 0 ? widths.amount + rounding : 0, column);
    widths.also = with_gap(widths.also > 0 ? widths.also + rounding : 0, column);
    widths.what = column.width - widths.tick - widths.when - widths.amount - widths.also;
    return widths;
}

/// Boxes with their words, as many to a line as fit.
double flow_boxes(Pen& pen, const CardRow& row, const Column& column, double x, double y) {
    double widest = 0;
    for (const std::string& words : row.boxes) widest = std::max(widest, pen.measure(words, plain(column)).width);
    const double side = 1.1 * column.size, line = 1.5 * column.size;
    const double each = side + 0.3 * column.size + widest + 0.8 * column.size, right = column.x + column.width;
    double at = x;
    const Tagged cell(pen, "TD");
    for (const std::string& words : row.boxes) {
        if (at > x && at + each - 0.8 * column.size > right) {
            at = x;
            y += line;
        }
        pen.box(at, y + 0.12 * column.size, side);
        pen.write("P", words, plain(column), at + side + 0.3 * column.size, y + 0.05 * column.size, 0);
        at += each;
    }
    return y + line;
}

/// The strokes of a tally, in fives, as many to a line as fit; returns where they end.
double flow_strokes(Pen& pen, int strokes, const Column& column, double x, double y) {
    const double apart = 0.3 * column.size, five = 5 * apart + 0.35 * column.size, line = 1.3 * column.size;
    const double right = column.x + column.width;
    double at = x;
    for (int i = 0; i < strokes; ++i) {
        if (i % 5 == 0 && at > x && at + 5 * apart > right) {
            at = x;
            y += line;
        }
        pen.stroke(at + (i % 5) * apart, y + 0.2 * column.size, y + 1.05 * column.size);
        if (i % 5 == 4) at += five;
    }
    return y + line;
}

double flow_tallies(Pen& pen, const CardRow& row, const Column& column, double x, double y) {
    double widest = 0;
    for (const CardTally& tally : row.tallies) widest = std::max(widest, pen.measure(tally.words, plain(column)).width);
    const Tagged cell(pen, "TD");
    for (const CardTally& tally : row.tallies) {
        pen.write("P", tally.words, plain(column), x, y, 0);
        y = flow_strokes(pen, tally.strokes, column, x + widest + 0.7 * column.size, y);
    }
    return y;
}

double flow_row(Pen& pen, const CardRow& row, const Widths& widths, const Column& column, double y) {
    const Tagged tagged(pen, "TR");
    double x = column.x;
    if (row.tick == CardRow::Tick::box) pen.box(x, y + 0.12 * column.size, box_side * column.size);
    x += widths.tick;
    double height = pen.write("TD", row.when, bold(column), x, y, 0).height;
    x += widths.when;
    const bool alone = row.amount.empty() && row.also.empty();  // then it may run on below the amounts of other rows
    const double room = alone ? column.x + column.width - x : widths.what;
    const double indent = x;
    height = std::max(height, pen.write("TD", row.what, plain(column), x, y, room).height);
    x += widths.what;
    const auto right = [&](const std::string& text, Lettering lettering, double width) {
        lettering.side = Lettering::Side::right;
        if (width > 0) height = std::max(height, pen.write("TD", text, lettering, x, y, width).height);
        x += width;
    };
    right(row.amount, bold(column), widths.amount);
    right(row.also, plain(column), widths.also);
    y += height;
    if (!row.boxes.empty()) y = flow_boxes(pen, row, column, indent, y);
    return row.tallies.empty() ? y : flow_tallies(pen, row, column, indent, y);
}

double flow_rows(Pen& pen, const std::vector<CardRow>& rows, const Widths& widths, const Column& column, double y) {
    for (const CardRow& row : rows) {
        if (&row != &rows.front())
            pen.line(column.x, y - 0.5 * between_rows * column.size, column.x + column.width, hairline);
        y = flow_row(pen, row, widths, column, y) + between_rows * column.size;
    }
    return y;
}

/// Two columns side by side, read down the left one first.
double flow_two_columns(Pen& pen, const CardSection& section, const Column& column, double y) {
    const Column left{column.x, (column.width - column_gap * column.size) / 2, column.size};
    const Column right{column.x + left.width + column_gap * column.size, left.width, column.size};
    const auto half = section.rows.begin() + static_cast<std::ptrdiff_t>((section.rows.size() + 1) / 2);
    const Widths widths = widths_of(pen, section, left);
    const double end = flow_rows(pen, {section.rows.begin(), half}, widths, left, y);
    return std::max(end, flow_rows(pen, {half, section.rows.end()}, widths, right, y));
}

double flow_note(Pen& pen, const CardRow& row, const Column& column, double y) {
    const Tagged item(pen, "LI");
    const double indent = 0.9 * column.size;
    pen.write("Lbl", "•", bold(column), column.x, y, 0);
    y += pen.write("LBody", row.what, plain(column), column.x + indent, y, column.width - indent).height;
    return y + 0.1 * column.size;
}

double flow_notes(Pen& pen, const CardSection& section, const Column& column, double y) {
    const Tagged list(pen, "L");
    for (const CardRow& row : section.rows) y = flow_note(pen, row, column, y);
    return y;
}

/// The shaded heading, from the gap above it to the one below.
double flow_heading(Pen& pen, const std::string& words, const Column& column, double y) {
    y += 0.32 * column.size;
    const Lettering heading{1.08 * column.size, Lettering::Weight::bold};
    const double indent = 0.4 * column.size;
    const double height = pen.measure(words, heading, column.width - 2 * indent).height;
    pen.shade(column.x, y, column.width, height);
    pen.write("H2", words, heading, column.x + indent, y, column.width - 2 * indent);
    return y + height + 0.18 * column.size;
}

}  // namespace

SectionHeights heights_of(Pen& pen, const CardSection& section, const Column& column) {
    SectionHeights heights;
    heights.heading = flow_heading(pen, section.heading + ", continued", column, 0);  // the longer of the two
    const Widths widths = widths_of(pen, section, column);
    for (const CardRow& row : section.rows)
        heights.rows.push_back(section.look == CardSection::Look::notes
                                   ? flow_note(pen, row, column, 0)
                                   : flow_row(pen, row, widths, column, 0) + between_rows * column.size);
    return heights;
}

double flow_section(Pen& pen, const CardSection& section, const Column& column, double y) {
    if (section.rows.empty()) return y;
    const Tagged tagged(pen, "Sect");
    y = flow_heading(pen, section.heading, column, y);
    if (section.look == CardSection::Look::notes) return flow_notes(pen, section, column, y);
    const Tagged table(pen, "Table");
    if (section.look == CardSection::Look::two_columns) return flow_two_columns(pen, section, column, y);
    return flow_rows(pen, section.rows, widths_of(pen, section, column), column, y);
}

}  // namespace baitwright
