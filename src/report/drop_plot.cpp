#include "report/drop_plot.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "quantities/units.h"
#include "report/display.h"
#include "report/drop_extent.h"
#include "report/imperial_text.h"
#include "report/shown_units.h"
#include "report/svg.h"
#include "report/wait_text.h"

namespace baitwright {

namespace {

constexpr double left = 70, surface = 90, most_down = 330, most_plan = 220, line_height = 20;

/// The picture's measures in pixels.
struct Frame {
    double across, right;
    bool phone;
};

Frame frame_of(PictureWidth width) {
    return width == PictureWidth::phone ? Frame{340, 332, true} : Frame{760, 730, false};
}

/// Metres to the page, the same in both directions.
struct MetreScale {
    double pixels, from;  // per metre; metres at the left edge
    [[nodiscard]] double x(double metres) const { return left + pixels * (metres - from); }
};

/// What is drawn along the tow, in metres.
struct Reach {
    double from = -0.3, to = 0.3;
    void take(Length low, Length high) {
        from = std::min(from, low.si());
        to = std::max(to, high.si());
    }
};

void reach_of(const DropAnswer& answer, Reach& reach) {
    const TowExtent most = most_along_tow(answer);
    reach.take(most.from, most.to);
    for (const DropClass& c : answer.classes)
        if (c.sinks) reach.take(c.drift - c.radius, c.drift + c.radius);
    for (const FallMark& mark : answer.fall) reach.take(mark.drift, mark.drift);
}

/// One scale for all that is drawn.
MetreScale metre_scale(const std::vector<DropAnswer>& answers, const Frame& frame) {
    const double right = frame.right;
    Reach reach;
    double deepest = 0, widest = 0.3;
    for (const DropAnswer& answer : answers) {
        reach_of(answer, reach);
        deepest = std::max(deepest, answer.depth.si());
        widest = std::max(widest, 1.2 * answer.width.most.si());
    }
    const double across = std::max(1.1 * (reach.to - reach.from), 0.5);
    const double pixels = std::min({(right - left) / across, most_down / deepest, most_plan / widest});
    return {pixels, 0.5 * (reach.from + reach.to) - 0.5 * (right - left) / pixels};
}

/// How thick it lies along the tow: each class even over its disc, seen from the side.
std::vector<double> thickness_along(const DropAnswer& answer, const MetreScale& scale, double right, int steps) {
    std::vector<double> thickness(static_cast<std::size_t>(steps) + 1);
    for (int i = 0; i <= steps; ++i) {
        const double at = scale.from + (right - left) / scale.pixels * i / steps;
        for (const DropClass& c : answer.classes) {
            // Drawn no narrower than can be seen.
            const double radius = std::max(c.radius.si(), 12 / scale.pixels), off = (at - c.drift.si()) / radius;
            if (c.sinks && std::abs(off) < 1)
                thickness[static_cast<std::size_t>(i)] +=
                    c.share * 2 / (std::numbers::pi * radius) * std::sqrt(1 - off * off);
        }
    }
    return thickness;
}

/// What cannot be drawn to the same scale says so.
constexpr const char* not_to_scale = "the curve: how thick it comes to lie, drawn much higher than it is";

/// Its way down as one, and the cloud from there: between the dotted lines, which end where nine tenths lie.
void draw_fall(Svg& svg, const DropAnswer& answer, const MetreScale& scale, double bed) {
    const auto at = [&](const FallMark& mark) {
        return Svg::Point{scale.x(mark.drift.si()), surface + scale.pixels * mark.depth.si()};
    };
    std::vector<Svg::Point> way{{scale.x(0), surface - 12}};
    for (const FallMark& mark : answer.fall) way.push_back(at(mark));
    svg.polyline(way, {0, 2, "6 4"});
    if (answer.breaks == Breaks::bottom) return;
    const double radius = std::cbrt(answer.volume.si() * 3 / (4 * std::numbers::pi));
    const FallMark end = answer.fall.empty() ? FallMark{} : answer.fall.back();
    const TowExtent most = most_along_tow(answer);
    svg.line({scale.x(end.drift.si() - radius), at(end).second}, {scale.x(most.from.si()), bed}, {120, 1, "2 4"});
    svg.line({scale.x(end.drift.si() + radius), at(end).second}, {scale.x(most.to.si()), bed}, {120, 1, "2 4"});
}

/// Where it breaks, in words beside the line; on a phone in two lines, on the side that has the room. `beside` is how
/// far from the line, and how far down.
void draw_break(Svg& svg, const DropAnswer& answer, const Frame& frame, const MetreScale& scale, Svg::Point beside) {
    const double at = scale.x(answer.fall.empty() ? 0 : answer.fall.back().drift.si());
    const bool midwater = answer.breaks_depth > Length{};
    const std::string where = midwater ? shown_length(answer.breaks_depth) + " down" : "the surface",
                      how = midwater ? "breaks about" : "breaks at";
    constexpr double letter = 8.6;  // of 14 pixels' type, of the wider faces
    const std::string line = how + " " + where;
    const auto letters = static_cast<double>(frame.phone ? std::max(how.size(), where.size()) : line.size());
    const bool right_of_it = at + beside.first + letter * letters < frame.right;
    const double x = right_of_it ? at + beside.first : at - beside.first;
    const Svg::Anchor anchor = right_of_it ? Svg::Anchor::start : Svg::Anchor::end;
    if (!frame.phone) return svg.text({x, beside.second}, line, 14, anchor);
    svg.text({x, beside.second}, how, 14, anchor);
    svg.text({x, beside.second + 18}, where, 14, anchor);
}

/// That it lands whole, beside where it does, on the side that has the room.
void draw_landing(Svg& svg, const Frame& frame, double at, double down) {
    constexpr double widest = 95;
    const bool right_of_it = at + 8 + widest < frame.right;
    svg.text({right_of_it ? at + 8 : at - 8, down}, "lands whole", 14,
             right_of_it ? Svg::Anchor::start : Svg::Anchor::end);
}

/// How deep it is, left of the bed; what is too wide for that stands over it.
void draw_depth(Svg& svg, Length depth, double bed) {
    constexpr std::size_t most_letters = 7;
    const std::string text = shown_as_told(depth);
    svg.text({8, text.size() > most_letters ? bed - 8 : bed + 5}, text, 14);
}

void draw_side(Svg& svg, const DropAnswer& answer, const Frame& frame, const MetreScale& scale, double bed) {
    constexpr int steps = 160;
    constexpr double highest = 46;
    const double right = frame.right;
    if (!frame.phone)
        svg.text({8, 24}, fmt::format("{}, {}: {}", answer.recipe, answer.feel, form_text(answer)), 17,
                 Svg::Anchor::start, true);
    svg.text({8, 46}, "from the side, to scale but for the heap", 14);
    svg.line({left, surface}, {right, surface}, {0, 1});
    svg.text({8, surface + 5}, "surface", 14);
    svg.line({left, bed}, {right, bed}, {0, 3});
    draw_depth(svg, answer.depth, bed);
    constexpr double half_words = 30;  // of "goes in", which stay on the picture
    svg.text({std::clamp(scale.x(0), half_words, frame.right - half_words), surface - 18}, "goes in", 14,
             Svg::Anchor::middle);
    draw_fall(svg, answer, scale, bed);
    if (answer.breaks != Breaks::bottom)
        draw_break(svg, answer, frame, scale, {12, surface + scale.pixels * answer.breaks_depth.si() + 5});
    else
        draw_landing(svg, frame, scale.x(answer.fall.empty() ? 0 : answer.fall.back().drift.si()), bed - 52);
    const std::vector<double> thickness = thickness_along(answer, scale, right, steps);
    const double most = *std::max_element(thickness.begin(), thickness.end());
    std::vector<Svg::Point> curve;
    for (int i = 0; i <= steps && most > 0; ++i)
        curve.emplace_back(left + (right - left) * i / steps,
                           bed - 2 - highest * thickness[static_cast<std::size_t>(i)] / most);
    svg.polyline(curve, {0, 2});
    if (frame.phone) {
        svg.text({8, bed + 22}, "the curve: how thick it comes to lie,", 14);
        svg.text({8, bed + 22 + line_height}, "drawn much higher than it is", 14);
    } else {
        svg.text({(left + right) / 2, bed + 22}, not_to_scale, 14, Svg::Anchor::middle);
    }
}

void draw_outline(Svg& svg, const MetreScale& scale, double middle_y, Length middle, Length length, Length width,
                  Svg::Pen pen) {
    std::vector<Svg::Point> outline;
    for (int i = 0; i <= 72; ++i) {
        const double angle = 2 * std::numbers::pi * i / 72;
        outline.emplace_back(scale.x(middle.si() + 0.5 * length.si() * std::cos(angle)),
                             middle_y + scale.pixels * 0.5 * width.si() * std::sin(angle));
    }
    svg.polyline(outline, pen);
}

std::string tow_words(const DropAnswer& answer) {
    const double top = answer.tow.si(), bottom = answer.tow_bottom.si();
    if (top != 0) return top > 0 ? "top tow to the right" : "top tow to the left";
    if (bottom != 0) return bottom > 0 ? "tow at the bottom to the right" : "tow at the bottom to the left";
    return "no tow";
}

/// What the outlines mean; in two lines where there is room for it.
std::vector<std::string> legend_of(const DropAnswer& answer, const Frame& frame) {
    std::vector<std::string> lines{
        "solid: nine tenths, " + patch_measures(answer, answer.length.most, answer.width.most),
        "dashed: half, " + patch_measures(answer, answer.length.half, answer.width.half), "cross: where it goes in",
        tow_words(answer)};
    if (frame.phone) return lines;
    return {lines[0] + "; " + lines[1], lines[2] + "; " + lines[3]};
}

void draw_plan(Svg& svg, const DropAnswer& answer, const Frame& frame, const MetreScale& scale, double top) {
    const double right = frame.right;
    const double middle_y = top + 40 + 0.5 * most_plan;
    svg.text({8, top + 20}, "from above, the same scale", 14);
    const Length most = most_along_tow(answer).middle(), half = half_along_tow(answer).middle();
    draw_outline(svg, scale, middle_y, most, answer.length.most, answer.width.most, {0, 2});
    draw_outline(svg, scale, middle_y, half, answer.length.half, answer.width.half, {0, 2, "6 4"});
    svg.line({scale.x(0), middle_y - 8}, {scale.x(0), middle_y + 8}, {0, 2});
    svg.line({scale.x(0) - 8, middle_y}, {scale.x(0) + 8, middle_y}, {0, 2});
    double below = top + 66 + most_plan;
    for (const std::string& line : legend_of(answer, frame)) {
        svg.text({8, below}, line, 14);
        below += line_height;
    }
    const bool feet = units_shown().feet;
    const auto unit = feet ? foot : metre;
    const double bar = round_step(std::min(5.0, (right - left) / scale.pixels / 2) / unit.in_si, 2);
    svg.line({right - scale.pixels * bar * unit.in_si, top + 16}, {right, top + 16}, {0, 3});
    svg.text({right, top + 34}, feet ? feet_text(bar * foot) : fmt::format("{:g} m", bar), 14, Svg::Anchor::end);
}

std::string middle_words(const DropAnswer& answer) {
    const double middle = answer.drift.p50.si();
    if (std::abs(middle) < 0.03) return "below where it goes in";
    return "its middle " + shown_length(answer.drift.p50) +
           ((middle > 0) == (answer.tow.si() >= 0) ? " down" : " against") + " the top tow";
}

std::string description(const DropAnswer& answer) {
    const std::string where = answer.breaks == Breaks::surface ? "breaks at the surface"
                              : answer.breaks == Breaks::bottom
                                  ? "lands whole on the bottom"
                                  : "breaks about " + shown_length(answer.breaks_depth) + " down";
    return fmt::format(
        "In {} of water it {}; half of it has landed after {}, nine tenths after {}, in a patch {} wide and {} long, {}. Estimates.",
        shown_as_told(answer.depth), where, shown_wait(answer.landed.p50), shown_wait(answer.landed.p90),
        shown_length(answer.width.most), shown_length(answer.length.most), middle_words(answer));
}

/// From the top of the picture: the bed, and the picture's end.
struct DropPanel {
    double bed, height;
};

DropPanel panel_of(const DropAnswer& answer, const Frame& frame, const MetreScale& scale) {
    if (answer.classes.empty()) return {0, 60};
    const double bed = surface + scale.pixels * answer.depth.si();
    const double legend = line_height * static_cast<double>(legend_of(answer, frame).size());
    return {bed, bed + 110 + most_plan + legend + (frame.phone ? line_height : 0)};
}

void draw_drop(Svg& svg, const DropAnswer& answer, const Frame& frame, const MetreScale& scale, double bed) {
    if (answer.classes.empty())
        return svg.text({8, 36}, frame.phone ? "It floats: nothing of it sinks."
                                             : fmt::format("{}, {}: {}: it floats, nothing of it sinks.", answer.recipe,
                                                           answer.feel, form_text(answer)));
    draw_side(svg, answer, frame, scale, bed);
    draw_plan(svg, answer, frame, scale, bed + (frame.phone ? 40 + line_height : 40));
}

std::string told_apart(const std::vector<DropAnswer>& answers) {
    std::string words;
    for (const DropAnswer& answer : answers) {
        if (!words.empty()) words += " ";
        if (answers.size() > 1) words += answer.feel + ", " + form_text(answer) + ": ";
        words += answer.classes.empty() ? "It floats: nothing of it sinks." : description(answer);
    }
    return words;
}

}  // namespace

std::string drop_plot(const DropAnswer& answer, PictureWidth width) {
    return drop_plot(std::vector<DropAnswer>{answer}, width);
}

std::string drop_plot(const std::vector<DropAnswer>& answers, PictureWidth width) {
    const Frame frame = frame_of(width);
    const MetreScale scale = metre_scale(answers, frame);
    double all = 0;
    for (const DropAnswer& answer : answers) all += panel_of(answer, frame, scale).height;
    Svg svg(frame.across, all, "What the feed does in the water", told_apart(answers));
    double top = 0;
    for (const DropAnswer& answer : answers) {
        const DropPanel panel = panel_of(answer, frame, scale);
        svg.begin_group(top);
        draw_drop(svg, answer, frame, scale, panel.bed);
        svg.end_group();
        top += panel.height;
    }
    return svg.document();
}

}  // namespace baitwright
