#include "report/drop_side.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "report/display.h"
#include "report/drop_extent.h"
#include "report/drop_lines.h"

namespace baitwright {

namespace {

/// What a letter of the picture's type is wide at most, and how far words keep from what they tell of.
constexpr double letter = 8.6, beside = 12;

double width_of_words(const std::string& words) {
    return letter * static_cast<double>(words.size());
}

/// On the bed, no narrower than can be seen.
std::pair<double, double> patch_on_bed(const TowExtent& extent, const MetreScale& scale) {
    constexpr double least = 4;
    const double from = scale.x(extent.from.si()), to = scale.x(extent.to.si());
    const double more = std::max(0.0, 0.5 * (least - (to - from)));
    return {from - more, to + more};
}

/// Where its way down as one ends.
FallMark end_of_fall(const DropAnswer& answer) {
    return answer.fall.empty() ? FallMark{} : answer.fall.back();
}

/// The cloud from where it breaks; of what lands whole only a low heap, higher than it is so that it can be seen.
void draw_cone(Svg& svg, const DropAnswer& answer, const MetreScale& scale, double top, double bed,
               const TowExtent& extent, int grey) {
    const auto [from, to] = patch_on_bed(extent, scale);
    if (answer.breaks == Breaks::bottom) {
        constexpr double heap = 8;
        const double slope = std::min(heap, 0.25 * (to - from));
        return svg.polygon({{from, bed}, {from + slope, bed - heap}, {to - slope, bed - heap}, {to, bed}}, grey);
    }
    const double middle = scale.x(end_of_fall(answer).drift.si());
    const double radius =
        std::min(std::cbrt(answer.volume.si() * 3 / (4 * std::numbers::pi)) * scale.pixels, 0.5 * (to - from));
    svg.polygon({{middle - radius, top}, {middle + radius, top}, {to, bed}, {from, bed}}, grey);
}

void draw_fall(Svg& svg, const DropAnswer& answer, const DropFrame& frame, const MetreScale& scale) {
    std::vector<Svg::Point> way{{scale.x(0), frame.surface - 12}};
    for (const FallMark& mark : answer.fall)
        way.emplace_back(scale.x(mark.drift.si()), frame.surface + scale.down * mark.depth.si());
    if (way.size() == 1) way.emplace_back(scale.x(0), frame.surface);
    svg.polyline(way, {0, 2, "6 4"});
}

/// Words beside a point, a line each: on the side away from where it lies, if that has the room.
void draw_beside(Svg& svg, const DropAnswer& answer, const DropFrame& frame, const MetreScale& scale, Svg::Point point,
                 const std::vector<std::string>& lines) {
    double wide = beside;
    for (const std::string& line : lines) wide = std::max(wide, beside + width_of_words(line));
    const bool room_right = point.first + wide<frame.across, room_left = point.first - wide> frame.left;
    const bool leans_left = scale.x(most_along_tow(answer).middle().si()) <= point.first;
    const bool right_of_it = leans_left ? room_right || !room_left : room_right && !room_left;
    for (const std::string& line : lines) {
        svg.text({right_of_it ? point.first + beside : point.first - beside, point.second}, line, 14,
                 right_of_it ? Svg::Anchor::start : Svg::Anchor::end);
        point.second += 18;
    }
}

/// Where it goes in, and where it breaks; at the surface the two are one.
void draw_words(Svg& svg, const DropAnswer& answer, const DropFrame& frame, const MetreScale& scale, double bed) {
    const bool at_surface = answer.breaks == Breaks::surface;
    const std::string in = at_surface ? "breaks at the surface" : "goes in";
    const double half = 0.5 * width_of_words(in);
    svg.text({std::clamp(scale.x(0), half, frame.across - half), frame.surface - 18}, in, 14, Svg::Anchor::middle);
    if (at_surface) return;
    const double at = scale.x(end_of_fall(answer).drift.si());
    if (answer.breaks == Breaks::bottom)
        return draw_beside(svg, answer, frame, scale, {at, bed - 18},
                           {lands_whole(answer)        ? "lands whole"
                            : mostly_wears_off(answer) ? "what is left lands"
                                                       : "lands"});
    const std::string where = shown_length(answer.breaks_depth) + " down",
                      what = answer.half_worn ? "worn away" : "breaks";
    const std::vector<std::string> lines =
        frame.phone ? std::vector<std::string>{what, where} : std::vector<std::string>{what + " " + where};
    const double lowest = bed - 8 - 18 * static_cast<double>(lines.size() - 1);
    const double down = frame.surface + scale.down * answer.breaks_depth.si() + 5;
    draw_beside(svg, answer, frame, scale, {at, std::min(std::max(down, frame.surface + 16), lowest)}, lines);
}

/// The depth of the bed, and round ones above it that have the room.
void draw_depths(Svg& svg, const DropAnswer& answer, const DropFrame& frame, const MetreScale& scale, double bed) {
    constexpr double line_room = 18;
    svg.line({frame.left, frame.surface}, {frame.left, bed}, {150, 1});
    const auto words = [&](double y, const std::string& text) {
        svg.line({frame.left - 5, y}, {frame.left, y}, {0, 1});
        svg.text({frame.left - 9, y + 5}, text, 14, Svg::Anchor::end);
    };
    for (const ScaleMark& mark : scale_marks(answer.depth.si(), scale.down, 36)) {
        const double y = frame.surface + scale.down * mark.at;
        if (y < bed - line_room) words(y, mark.words);
    }
    words(bed, shown_as_told(answer.depth));
}

/// The bed, and how far it is along it from where the feed goes in.
void draw_bed(Svg& svg, const DropFrame& frame, const MetreScale& scale, double bed) {
    const double to = scale.from + (frame.right - frame.left) / scale.pixels;
    svg.line({frame.left, bed}, {frame.right, bed}, {0, 2});
    for (const ScaleMark& mark : scale_marks(std::max(to, -scale.from), scale.pixels, 62))
        for (const double side : {-1.0, 1.0}) {
            const double x = scale.x(side * mark.at), half = 0.5 * width_of_words(mark.words);
            if (x < frame.left || x > frame.right || (side < 0 && !(mark.at > 0))) continue;
            svg.line({x, bed}, {x, bed + 6}, {0, 1});
            if (x - half > frame.left && x + half < frame.across)
                svg.text({x, bed + 21}, mark.words, 14, Svg::Anchor::middle);
        }
}

}  // namespace

void draw_side(Svg& svg, const DropAnswer& answer, const DropFrame& frame, const MetreScale& scale, double bed) {
    const double top = frame.surface + scale.down * answer.breaks_depth.si();
    draw_cone(svg, answer, scale, top, bed, most_along_tow(answer), grey_of_most);
    draw_cone(svg, answer, scale, top, bed, half_along_tow(answer), grey_of_half);
    svg.line({frame.left, frame.surface}, {frame.right, frame.surface}, {0, 1});
    draw_bed(svg, frame, scale, bed);
    draw_depths(svg, answer, frame, scale, bed);
    draw_fall(svg, answer, frame, scale);
    draw_words(svg, answer, frame, scale, bed);
}

}  // namespace baitwright
