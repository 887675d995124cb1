#include "report/drop_scale.h"

#include <fmt/format.h>

#include <algorithm>

#include "quantities/units.h"
#include "report/drop_extent.h"
#include "report/imperial_text.h"
#include "report/shown_units.h"
#include "report/svg.h"

namespace baitwright {

namespace {

/// What is drawn along the tow, in metres.
struct DrawnReach {
    double from = -0.3, to = 0.3;
    void take(Length low, Length high) {
        from = std::min(from, low.si());
        to = std::max(to, high.si());
    }
};

}  // namespace

DropFrame drop_frame(PictureWidth width) {
    const double left = units_shown().feet ? 86 : 66;  // as wide as the widest depth beside it
    if (width == PictureWidth::phone) return {340, left, 332, 48, 120, 240, 160, true};
    return {760, left, 740, 82, 150, 330, 220, false};
}

MetreScale metre_scale(const std::vector<DropAnswer>& answers, const DropFrame& frame) {
    DrawnReach reach;
    double deepest = 0, widest = 0.3;
    for (const DropAnswer& answer : answers) {
        const TowExtent most = most_along_tow(answer);
        reach.take(most.from, most.to);
        for (const FallMark& mark : answer.fall) reach.take(mark.drift, mark.drift);
        deepest = std::max(deepest, answer.depth.si());
        if (is_drawn_out(answer)) widest = std::max(widest, answer.width.most.si());
    }
    const double across = std::max(1.1 * (reach.to - reach.from), 0.5), wide = frame.right - frame.left;
    const double pixels = std::min({wide / across, frame.most_down / deepest, frame.most_above / widest});
    return {pixels, std::max(pixels, frame.least_down / deepest), 0.5 * (reach.from + reach.to) - 0.5 * wide / pixels,
            frame.left};
}

std::vector<ScaleMark> scale_marks(double to, double pixels_per_metre, double least_apart) {
    const bool feet = units_shown().feet;
    const double unit = feet ? Length(1.0 * foot).si() : 1;
    double step = round_step(least_apart / pixels_per_metre / unit, 1);
    if (feet) step = std::max(step, 1.0);
    std::vector<ScaleMark> marks;
    for (int i = 0; i * step * unit <= to * (1 + 1e-9); ++i)
        marks.push_back(
            {i * step * unit, feet ? feet_text(i * step * foot) : fmt::format("{:g}{}", i * step, i ? " m" : "")});
    if (feet) marks.front().words = "0";
    return marks;
}

}  // namespace baitwright
