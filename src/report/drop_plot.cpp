#include "report/drop_plot.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>

#include "report/display.h"
#include "report/drop_extent.h"
#include "report/drop_lines.h"
#include "report/drop_side.h"
#include "report/one_unit.h"
#include "report/svg.h"
#include "report/wait_text.h"

namespace baitwright {

namespace {

constexpr double line_height = 22;

void draw_patch(Svg& svg, const MetreScale& scale, double middle_y, Length middle, Length length, Length width,
                int grey) {
    constexpr int points = 72;
    constexpr double least = 2;
    const double along = std::max(0.5 * scale.pixels * length.si(), least),
                 across = std::max(0.5 * scale.pixels * width.si(), least);
    std::vector<Svg::Point> outline;
    for (int i = 0; i < points; ++i) {
        const double angle = 2 * std::numbers::pi * i / points;
        outline.emplace_back(scale.x(middle.si()) + along * std::cos(angle), middle_y + across * std::sin(angle));
    }
    svg.polygon(outline, grey);
}

/// How high the view from above is; where the patch is round it would show nothing new.
double height_above(const DropAnswer& answer, const MetreScale& scale) {
    constexpr double least = 40, heading = 26;
    if (!is_drawn_out(answer)) return 0;
    return heading + std::max(scale.pixels * answer.width.most.si(), least) + 10;
}

void draw_above(Svg& svg, const DropAnswer& answer, const DropFrame& frame, const MetreScale& scale, double top) {
    const double height = height_above(answer, scale);
    if (!(height > 0)) return;
    svg.text({8, top + 14}, frame.phone ? "from above, the cross where it goes in"
                                        : "from above, the same scale; the cross where it goes in");
    const double middle_y = top + 26 + 0.5 * (height - 36);
    draw_patch(svg, scale, middle_y, most_along_tow(answer).middle(), answer.length.most, answer.width.most,
               grey_of_most);
    draw_patch(svg, scale, middle_y, half_along_tow(answer).middle(), answer.length.half, answer.width.half,
               grey_of_half);
    svg.line({scale.x(0), middle_y - 8}, {scale.x(0), middle_y + 8}, {0, 2});
    svg.line({scale.x(0) - 8, middle_y}, {scale.x(0) + 8, middle_y}, {0, 2});
}

std::string tow_words(const DropAnswer& answer) {
    const double top = answer.tow.si(), bottom = answer.tow_bottom.si();
    if (top != 0) return top > 0 ? "top tow to the right" : "top tow to the left";
    if (bottom != 0) return bottom > 0 ? "tow at the bottom to the right" : "tow at the bottom to the left";
    return {};
}

/// That depths are not to the scale of the rest; empty where they are.
std::string scale_words(const MetreScale& scale) {
    const double times = scale.down / scale.pixels;
    if (times < 1.05) return {};
    return fmt::format("depths drawn {:.2g} times as large", times);
}

double height_of_legend(const DropAnswer& answer, const MetreScale& scale) {
    return line_height * (2 + (tow_words(answer).empty() ? 0 : 1) + (scale_words(scale).empty() ? 0 : 1));
}

/// An arrow as the tow runs.
void draw_tow(Svg& svg, double y, double way) {
    const double tip = 16 + 8 * way;
    svg.line({16 - 8 * way, y}, {tip, y}, {0, 2});
    svg.polyline({{tip - 5 * way, y - 4}, {tip, y}, {tip - 5 * way, y + 4}}, {0, 2});
}

/// What the greys mean, which way the tow runs, and what is not to scale.
void draw_legend(Svg& svg, const DropAnswer& answer, const MetreScale& scale, double top) {
    const auto line = [&](const std::string& words) {
        svg.text({32, top + 15}, words);
        top += line_height;
    };
    const auto swatch = [&](int grey) {
        svg.polygon({{8, top + 3}, {24, top + 3}, {24, top + 17}, {8, top + 17}}, grey);
    };
    swatch(grey_of_half);
    line("half: " + patch_measures(answer, answer.length.half, answer.width.half));
    swatch(grey_of_most);
    line("90 %: " + patch_measures(answer, answer.length.most, answer.width.most));
    if (const std::string tow = tow_words(answer); !tow.empty()) {
        draw_tow(svg, top + 10, tow.ends_with("left") ? -1 : 1);
        line(tow);
    }
    if (const std::string words = scale_words(scale); !words.empty()) line(words);
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
                                  ? (lands_whole(answer)        ? "lands whole on the bottom"
                                     : mostly_wears_off(answer) ? "wears off on the way, and the rest lands"
                                                                : "lands on the bottom")
                              : answer.half_worn ? "has worn away about " + shown_length(answer.breaks_depth) + " down"
                                                 : "breaks about " + shown_length(answer.breaks_depth) + " down";
    const LengthUnit unit = one_unit({answer.width.most, answer.length.most});
    return fmt::format(
        "In {} of water it {}; half of it has landed after {}, nine tenths after {}, in a patch {} wide and {} long, {}. Estimates.",
        shown_as_told(answer.depth), where, shown_wait(answer.landed.p50), shown_wait(answer.landed.p90),
        shown_length(answer.width.most, unit), shown_length(answer.length.most, unit), middle_words(answer));
}

/// From the top of the picture: the bed, and the picture's end.
struct DropPanel {
    double bed, height;
};

DropPanel panel_of(const DropAnswer& answer, const DropFrame& frame, const MetreScale& scale) {
    if (answer.classes.empty()) return {0, 60};
    const double bed = frame.surface + scale.down * answer.depth.si();
    return {bed, bed + 34 + height_above(answer, scale) + height_of_legend(answer, scale) + 10};
}

std::string panel_title(const DropAnswer& answer) {
    return fmt::format("{}, {}: {}", answer.recipe, answer.feel, form_text(answer));
}

void draw_drop(Svg& svg, const DropAnswer& answer, const DropFrame& frame, const MetreScale& scale, double bed) {
    if (answer.classes.empty())
        return svg.text({8, 36}, frame.phone ? "It floats: nothing of it sinks."
                                             : panel_title(answer) + ": it floats, nothing of it sinks.");
    if (!frame.phone) svg.text({8, 24}, panel_title(answer), 17, Svg::Anchor::start, true);
    draw_side(svg, answer, frame, scale, bed);
    draw_above(svg, answer, frame, scale, bed + 34);
    draw_legend(svg, answer, scale, bed + 34 + height_above(answer, scale));
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
    const DropFrame frame = drop_frame(width);
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
