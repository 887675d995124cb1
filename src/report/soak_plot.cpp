#include "report/soak_plot.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "quantities/sort_stably.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/pump_words.h"
#include "report/svg.h"

namespace baitwright {

namespace {

constexpr double page_across = 760, panel_height = 380;
constexpr double axes_left = 80, axes_right = 610, axes_above = 76, axes_below = 312;  // of the axes, in their panel

/// One panel: its axes, and where a value falls on them.
class Panel {
public:
    Panel(Svg& svg, double top, double span, const char* across, const char* up) : svg_(svg), top_(top), span_(span) {
        const double step = round_step(span, 6);
        for (int i = 0; i * step <= span * 1.0001; ++i) {
            svg.line(at(i * step, 0), {x(i * step), y(0) + 5}, {0, 1});
            svg.text({x(i * step), y(0) + 22}, fmt::format("{:g}", i * step), 14, Svg::Anchor::middle);
        }
        for (int percents = 0; percents <= 100; percents += 25) {
            svg.line(at(0, percents / 100.0), at(span, percents / 100.0), {percents ? 215 : 0, 1});
            svg.text({axes_left - 8, y(percents / 100.0) + 5}, fmt::format("{} %", percents), 14, Svg::Anchor::end);
        }
        svg.line(at(0, 0), at(0, 1), {0, 1});
        svg.text({(axes_left + axes_right) / 2, top + axes_below + 42}, across, 14, Svg::Anchor::middle);
        svg.text({8, top + axes_above - 34}, up, 14);
    }
    [[nodiscard]] double x(double value) const { return axes_left + (axes_right - axes_left) * value / span_; }
    [[nodiscard]] double y(double share) const { return top_ + axes_below + (axes_above - axes_below) * share; }
    [[nodiscard]] Svg::Point at(double value, double share) const { return {x(value), y(share)}; }

    /// A dotted upright line with its words on top, on the upper or the lower of two lines.
    void mark(double value, const std::string& words, int row) const {
        svg_.line(at(value, 0), {x(value), y(1) - 4}, {90, 1, "2 3"});
        svg_.text({x(value), y(1) - 7 - 15.0 * row}, words, 12, Svg::Anchor::middle);
    }

private:
    Svg& svg_;
    double top_, span_;
};

template <class Value>
std::vector<Svg::Point> curve_of(const std::vector<SoakPoint>& points, const Panel& panel, Value value) {
    std::vector<Svg::Point> curve;
    curve.reserve(points.size());
    for (const SoakPoint& point : points) curve.push_back(panel.at(point.at.in(minute), value(point)));
    return curve;
}

/// Labels at the curves' ends, moved apart where they would touch.
void label_ends(Svg& svg, const Panel& panel, const SoakPoint& end) {
    constexpr double apart = 17;
    struct Label {
        double y;
        const char* words;
    };
    std::vector<Label> labels{{panel.y(end.surface), "outside (dotted)"},
                              {panel.y(end.mean), "average (solid)"},
                              {panel.y(end.core), "core (dashed)"}};
    sort_stably(labels.begin(), labels.end(), [](const Label& a, const Label& b) { return a.y < b.y; });
    const double middle = labels[1].y;
    labels[0].y = std::min(labels[0].y, middle - apart);
    labels[2].y = std::max(labels[2].y, middle + apart);
    for (const Label& label : labels) svg.text({axes_right + 8, label.y + 5}, label.words, 14);
}

void draw_soaked(Svg& svg, double top, const SoakedAnswer& soaked, const SoakAnswer& answer, double span) {
    svg.text({8, top + 24}, fmt::format("{} in water at {}", soaked.name, shown_temperature(answer.water)), 17,
             Svg::Anchor::start, true);
    const Panel panel(svg, top, span, "minutes since the water went on", "water held, of all they can take");
    const char* first = answer.method == SoakMethod::covered ? "drain" : "water gone";
    panel.mark(soaked.drained.at.in(minute), first, 0);
    if (soaked.ready.at > soaked.drained.at) panel.mark(soaked.ready.at.in(minute), "ready", 0);
    if (soaked.even.at > soaked.ready.at)
        panel.mark(soaked.even.at.in(minute), "even", soaked.even.at - soaked.ready.at < 0.07 * span * minute ? 1 : 0);
    svg.polyline(curve_of(soaked.curve, panel, [](const SoakPoint& p) { return double(p.surface); }), {0, 2, "2 4"});
    svg.polyline(curve_of(soaked.curve, panel, [](const SoakPoint& p) { return double(p.core); }), {0, 2, "9 5"});
    svg.polyline(curve_of(soaked.curve, panel, [](const SoakPoint& p) { return double(p.mean); }), {0, 3});
    label_ends(svg, panel, soaked.curve.back());
}

void draw_pumped(Svg& svg, double top, const PumpedAnswer& pumped, const SoakAnswer& answer) {
    svg.text({8, top + 24}, pumped.name + " under the pump, water at " + shown_temperature(answer.water), 17,
             Svg::Anchor::start, true);
    const double span = static_cast<double>(pumped.by_stroke.size()) + 0.5;
    const Panel panel(svg, top, span, "strokes", "pores full of water");
    const double across = 0.6 * (panel.x(1) - panel.x(0));
    for (const StrokeAnswer& stroke : pumped.by_stroke) {
        const int grey = stroke.buoyancy == Buoyancy::floats         ? 235
                         : stroke.buoyancy == Buoyancy::sinks_slowly ? 170
                                                                     : 105;
        svg.rectangle({panel.x(stroke.strokes) - across / 2, panel.y(stroke.fill)}, across,
                      panel.y(0) - panel.y(stroke.fill), grey);
    }
    if (pumped.fewest) panel.mark(*pumped.fewest, "sinks from here", 0);
    svg.text({axes_right + 8, panel.y(0.9)}, "pale: floats", 14);
    svg.text({axes_right + 8, panel.y(0.9) + 20}, "grey: sinks slowly", 14);
    svg.text({axes_right + 8, panel.y(0.9) + 40}, "dark: sinks", 14);
}

std::string description(const SoakAnswer& answer) {
    std::string text;
    for (const SoakedAnswer& soaked : answer.soaked)
        text += fmt::format(
            "{} in water at {}: drained after {}, ready after {}, even right through after {}; by then they hold {} of all they can take on average. ",
            soaked.name, shown_temperature(answer.water), shown_soak_time(soaked.drained.at),
            shown_soak_time(soaked.ready.at), shown_soak_time(soaked.even.at), shown_percent(soaked.uptake));
    for (const PumpedAnswer& pumped : answer.pumped)
        text += pumped.fewest ? fmt::format("{}: sinks from {} on; after {} its pores are {} full. ", pumped.name,
                                            stroke_count(*pumped.fewest), pumped.by_stroke.back().strokes,
                                            shown_percent(pumped.by_stroke.back().fill))
                              : fmt::format("{}: no number of strokes sinks it. ", pumped.name);
    return text;
}

/// The longest time that any of the answers draws that pellet over, in minutes.
double span_of(const std::vector<SoakAnswer>& answers, std::size_t pellet) {
    double span = 0;
    for (const SoakAnswer& answer : answers) span = std::max(span, answer.soaked[pellet].curve.back().at.in(minute));
    return span;
}

}  // namespace

std::string soak_plot(const SoakAnswer& answer) {
    return soak_plot(std::vector<SoakAnswer>{answer});
}

std::string soak_plot(const std::vector<SoakAnswer>& answers) {
    std::size_t panels = 0;
    std::string words;
    for (const SoakAnswer& answer : answers) {
        panels += answer.soaked.size() + answer.pumped.size();
        words += description(answer);
    }
    Svg svg(page_across, static_cast<double>(panels) * panel_height, "How the pellets take up water",
            words + "Estimates.");
    double top = 0;
    const std::size_t pellets = answers.front().soaked.size(), expanders = answers.front().pumped.size();
    for (std::size_t i = 0; i < pellets; ++i)
        for (const SoakAnswer& answer : answers) {
            draw_soaked(svg, top, answer.soaked[i], answer, span_of(answers, i));
            top += panel_height;
        }
    for (std::size_t i = 0; i < expanders; ++i)
        for (const SoakAnswer& answer : answers) {
            draw_pumped(svg, top, answer.pumped[i], answer);
            top += panel_height;
        }
    return svg.document();
}

}  // namespace baitwright
