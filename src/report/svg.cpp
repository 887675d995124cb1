#include "report/svg.h"

#include <fmt/format.h>

#include <cmath>

#include "report/degree_sign.h"

namespace baitwright {

namespace {

std::string escaped(std::string_view words) {
    std::string safe;
    for (const char c : with_degree_signs(words)) {
        switch (c) {
            case '&':
                safe += "&amp;";
                break;
            case '<':
                safe += "&lt;";
                break;
            case '>':
                safe += "&gt;";
                break;
            case '"':
                safe += "&quot;";
                break;
            default:
                safe += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;  // XML 1.0 allows no other control characters
        }
    }
    return safe;
}

std::string grey_of(int grey) {
    return fmt::format("#{0:02x}{0:02x}{0:02x}", grey);
}

std::string stroke_of(const Svg::Pen& pen) {
    std::string stroke = fmt::format(R"(stroke="{}" stroke-width="{:g}" fill="none")", grey_of(pen.grey), pen.width);
    if (!pen.dashes.empty()) stroke += fmt::format(" stroke-dasharray=\"{}\"", pen.dashes);
    return stroke;
}

std::string path_of(const std::vector<Svg::Point>& points) {
    std::string path;
    for (const Svg::Point& point : points)
        path += fmt::format("{}{:.1f},{:.1f}", path.empty() ? "" : " ", point.first, point.second);
    return path;
}

}  // namespace

Svg::Svg(double width, double height, std::string_view title, std::string_view description)
    : text_(fmt::format(
          "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0:g}\" height=\"{1:g}\" viewBox=\"0 0 {0:g} {1:g}\" "
          "role=\"img\" aria-labelledby=\"title desc\" font-family=\"sans-serif\">\n"
          "<title id=\"title\">{2}</title>\n<desc id=\"desc\">{3}</desc>\n"
          "<rect width=\"{0:g}\" height=\"{1:g}\" fill=\"#ffffff\"/>\n",
          width, height, escaped(title), escaped(description))) {}

void Svg::line(Point from, Point to, Pen pen) {
    text_ += fmt::format("<line x1=\"{:.1f}\" y1=\"{:.1f}\" x2=\"{:.1f}\" y2=\"{:.1f}\" {}/>\n", from.first,
                         from.second, to.first, to.second, stroke_of(pen));
}

void Svg::polyline(const std::vector<Point>& points, Pen pen) {
    text_ += fmt::format("<polyline points=\"{}\" {}/>\n", path_of(points), stroke_of(pen));
}

void Svg::polygon(const std::vector<Point>& points, int grey) {
    text_ += fmt::format("<polygon points=\"{}\" fill=\"{}\"/>\n", path_of(points), grey_of(grey));
}

void Svg::rectangle(Point corner, double width, double height, int grey) {
    text_ += fmt::format(
        "<rect x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.1f}\" fill=\"{}\" stroke=\"#000000\"/>\n",
        corner.first, corner.second, width, height, grey_of(grey));
}

void Svg::text(Point at, std::string_view words, double size, Anchor anchor, bool bold) {
    const char* where = anchor == Anchor::start ? "start" : anchor == Anchor::middle ? "middle" : "end";
    text_ += fmt::format(
        "<text x=\"{:.1f}\" y=\"{:.1f}\" font-size=\"{:g}\" text-anchor=\"{}\"{} fill=\"#000000\">{}</text>\n",
        at.first, at.second, size, where, bold ? " font-weight=\"bold\"" : "", escaped(words));
}

void Svg::begin_group(double down) {
    text_ += fmt::format("<g transform=\"translate(0 {:.1f})\">\n", down);
}

void Svg::end_group() {
    text_ += "</g>\n";
}

std::string Svg::document() const {
    return text_ + "</svg>\n";
}

double round_step(double span, int about) {
    const double rough = span / about, power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (rough <= factor * power * 1.0000001) return factor * power;
    return 10 * power;
}

}  // namespace baitwright
