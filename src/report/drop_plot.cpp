#include "report/drop_plot.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "physics/particle_cloud.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/svg.h"

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

MetreScale metre_scale(const DropAnswer& answer, const Frame& frame) {
    const double right = frame.right;
    const Length half = 0.5 * answer.length.most;
    double from = std::min(-0.3, (answer.drift.p50 - half).si()), to = std::max(0.3, (answer.drift.p50 + half).si());
    for (const DropClass& c : answer.classes) {
        if (!c.sinks) continue;
        from = std::min(from, (c.drift - c.radius).si());
        to = std::max(to, (c.drift + c.radius).si());
    }
    const double across = std::max(1.1 * (to - from), 0.5);
    const double pixels = std::min({(right - left) / across, most_down / answer.depth.si(),
                                    most_plan / std::max(0.3, 1.2 * answer.width.most.si())});
    return {pixels, 0.5 * (from + to) - 0.5 * (right - left) / pixels};
}

/// How thick it lies along the tow: each class even over its disc, seen from the side.
std::vector<double> thickness_along(const DropAnswer& answer, const MetreScale& scale, double right, int steps) {
    std::vector<double> thickness(static_cast<std::size_t>(steps) + 1);
    for (int i = 0; i <= steps; ++i) {
        const double at = scale.from + (right - left) / scale.pixels * i / steps;
        for (const DropClass& c : answer.classes) {
            const double radius = c.radius.si(), off = (at - c.drift.si()) / radius;
            if (c.sinks && std::abs(off) < 1)
                thickness[static_cast<std::size_t>(i)] +=
                    c.share * 2 / (std::numbers::pi * radius) * std::sqrt(1 - off * off);
        }
    }
    return thickness;
}

/// Where it breaks, in words beside the line; on a phone in two lines, on the side that has the room. `beside` is how
/// far from the line, and how far down.
void draw_break(Svg& svg, const DropAnswer& answer, const Frame& frame, const MetreScale& scale, Svg::Point beside) {
    const double at = scale.x(0);
    const bool midwater = answer.breaks_depth > Length{};
    const std::string where = midwater ? shown_length(answer.breaks_depth) + " down" : "the surface",
                      how = midwater ? "breaks about" : "breaks at";
    if (!frame.phone) {
        svg.text({at + beside.first, beside.second}, how + " " + where, 14);
        return;
    }
    constexpr double letter = 8.6;  // of 14 pixels' type, of the wider faces
    const bool right_of_it =
        at + beside.first + letter * static_cast<double>(std::max(how.size(), where.size())) < frame.right;
    const double x = right_of_it ? at + beside.first : at - beside.first;
    const Svg::Anchor anchor = right_of_it ? Svg::Anchor::start : Svg::Anchor::end;
    svg.text({x, beside.second}, how, 14, anchor);
    svg.text({x, beside.second + 18}, where, 14, anchor);
}

void draw_side(Svg& svg, const DropAnswer& answer, const Frame& frame, const MetreScale& scale, double bed) {
    constexpr int steps = 160;
    constexpr double highest = 46;
    const double right = frame.right;
    if (!frame.phone)
        svg.text({8, 24}, fmt::format("{}, {}: {}", answer.recipe, answer.feel, answer.form), 17, Svg::Anchor::start,
                 true);
    svg.text({8, 46}, "from the side, to scale", 14);
    svg.line({left, surface}, {right, surface}, {0, 1});
    svg.text({8, surface + 5}, "surface", 14);
    svg.line({left, bed}, {right, bed}, {0, 3});
    svg.text({8, bed + 5}, fmt::format("{:.2g} m", answer.depth.si()), 14);
    const auto y = [&](double metres) { return surface + scale.pixels * metres; };
    const double radius = std::cbrt(answer.volume.si() * 3 / (4 * std::numbers::pi)), broken = answer.breaks_depth.si();
    svg.line({scale.x(0), surface - 12}, {scale.x(0), y(broken)}, {0, 2, "6 4"});
    svg.text({scale.x(0), surface - 18}, "goes in", 14, Svg::Anchor::middle);
    if (answer.breaks != Breaks::bottom) {
        const double wide = radius + cloud_widens * (answer.depth.si() - broken);
        svg.line({scale.x(-radius), y(broken)}, {scale.x(-wide), bed}, {120, 1, "2 4"});
        svg.line({scale.x(radius), y(broken)}, {scale.x(wide), bed}, {120, 1, "2 4"});
        draw_break(svg, answer, frame, scale, {scale.x(radius) - scale.x(0) + 8, y(broken) + 5});
    } else {
        svg.text({scale.x(0) + 8, bed - 52}, "lands whole", 14);
    }
    const std::vector<double> thickness = thickness_along(answer, scale, right, steps);
    const double most = *std::max_element(thickness.begin(), thickness.end());
    std::vector<Svg::Point> curve;
    for (int i = 0; i <= steps && most > 0; ++i)
        curve.emplace_back(left + (right - left) * i / steps,
                           bed - 2 - highest * thickness[static_cast<std::size_t>(i)] / most);
    svg.polyline(curve, {0, 2});
    svg.text({(left + right) / 2, bed + 22}, "the curve: how thick it comes to lie", 14, Svg::Anchor::middle);
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

/// What the outlines mean; in one line where there is room for it.
std::vector<std::string> legend_of(const DropAnswer& answer, const Frame& frame) {
    const std::vector<std::string> lines{fmt::format("solid: nine tenths, {} across", shown_length(answer.width.most)),
                                         fmt::format("dashed: half, {} across", shown_length(answer.width.half)),
                                         "cross: where it goes in", "top tow to the right"};
    if (frame.phone) return lines;
    return {fmt::format("{}; {}; {}; {}", lines[0], lines[1], lines[2], lines[3])};
}

void draw_plan(Svg& svg, const DropAnswer& answer, const Frame& frame, const MetreScale& scale, double top) {
    const double right = frame.right;
    const double middle_y = top + 40 + 0.5 * most_plan;
    svg.text({8, top + 20}, "from above, the same scale", 14);
    draw_outline(svg, scale, middle_y, answer.drift.p50, answer.length.most, answer.width.most, {0, 2});
    draw_outline(svg, scale, middle_y, answer.drift.p50, answer.length.half, answer.width.half, {0, 2, "6 4"});
    svg.line({scale.x(0), middle_y - 8}, {scale.x(0), middle_y + 8}, {0, 2});
    svg.line({scale.x(0) - 8, middle_y}, {scale.x(0) + 8, middle_y}, {0, 2});
    double below = top + 66 + most_plan;
    for (const std::string& line : legend_of(answer, frame)) {
        svg.text({8, below}, line, 14);
        below += line_height;
    }
    const double metre_long = round_step(std::min(5.0, (right - left) / scale.pixels / 2), 2);
    svg.line({right - scale.pixels * metre_long, top + 16}, {right, top + 16}, {0, 3});
    svg.text({right, top + 34}, fmt::format("{:g} m", metre_long), 14, Svg::Anchor::end);
}

std::string description(const DropAnswer& answer) {
    const std::string where = answer.breaks == Breaks::surface ? "breaks at the surface"
                              : answer.breaks == Breaks::bottom
                                  ? "lands whole on the bottom"
                                  : "breaks about " + shown_length(answer.breaks_depth) + " down";
    return fmt::format(
        "In {:.2g} m of water it {}; half of it has landed after {:.0f} s, nine tenths after {:.0f} s, in a patch {} wide and {} long whose middle is {:.2g} m down the top tow. Estimates.",
        answer.depth.si(), where, answer.landed.p50.si(), answer.landed.p90.si(), shown_length(answer.width.most),
        shown_length(answer.length.most), answer.drift.p50.si());
}

}  // namespace

std::string drop_plot(const DropAnswer& answer, PictureWidth width) {
    const Frame frame = frame_of(width);
    if (answer.classes.empty()) {
        Svg svg(frame.across, 60, "It floats", "It floats: nothing of it sinks.");
        svg.text({8, 36}, "It floats: nothing of it sinks.");
        return svg.document();
    }
    const MetreScale scale = metre_scale(answer, frame);
    const double bed = surface + scale.pixels * answer.depth.si();
    const double legend = line_height * static_cast<double>(legend_of(answer, frame).size());
    Svg svg(frame.across, bed + 110 + most_plan + legend, "What the feed does in the water", description(answer));
    draw_side(svg, answer, frame, scale, bed);
    draw_plan(svg, answer, frame, scale, bed + 40);
    return svg.document();
}

}  // namespace baitwright
