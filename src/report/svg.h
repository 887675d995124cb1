#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace baitwright {

/// A drawing in SVG 1.1, in user units of about a pixel, origin at the upper left: real text, a title and a description
/// for screen readers, and nothing told by colour alone. Text is escaped; coordinates are written to a tenth.
/// **Source**: W3C, Scalable Vector Graphics 1.1 (2nd ed.), sections 5.4, 9, 10 (from memory).
class Svg {
public:
    using Point = std::pair<double, double>;
    enum class Anchor { start, middle, end };

    /// How a line is drawn: its grey (0 black, 255 white), width and dashes ("6 4"; empty for a solid one).
    struct Pen {
        int grey = 0;
        double width = 1;
        std::string_view dashes = {};
    };

    Svg(double width, double height, std::string_view title, std::string_view description);

    void line(Point from, Point to, Pen pen);
    void polyline(const std::vector<Point>& points, Pen pen);
    /// Filled with a grey, without an outline.
    void polygon(const std::vector<Point>& points, int grey);
    void rectangle(Point corner, double width, double height, int grey);
    void text(Point at, std::string_view words, double size = 14, Anchor anchor = Anchor::start, bool bold = false);

    /// Everything until the end of the group stands so much further down.
    void begin_group(double down);
    void end_group();

    /// The whole file, with a line end.
    [[nodiscard]] std::string document() const;

private:
    std::string text_;
};

/// A round step that parts the span into about so many: 1, 2 or 5 times a power of ten. For axes.
double round_step(double span, int about);

}  // namespace baitwright
