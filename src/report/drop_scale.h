#pragma once

#include <string>
#include <vector>

#include "answers/drop/drop_answer.h"

namespace baitwright {

/// How wide the picture is: for a printed page or a screen, or a phone held upright (340 pixels), in letters of the
/// same size.
enum class PictureWidth { page, phone };

/// The picture's measures in pixels.
struct DropFrame {
    double across, left, right;  ///< what is drawn stands between the last two
    double surface;              ///< of the side view, from its top
    double least_down, most_down;
    double most_above;  ///< how high the view from above may be
    bool phone;
};

DropFrame drop_frame(PictureWidth width);

/// Metres to the page, the same for all that is drawn together; the same in every direction, but that depths are drawn
/// larger where a long drift would leave nothing of them to be seen.
struct MetreScale {
    double pixels, down;  ///< per metre, along the bed and downwards
    double from, left;    ///< metres at the left edge
    [[nodiscard]] double x(double metres) const { return left + pixels * (metres - from); }
};

MetreScale metre_scale(const std::vector<DropAnswer>& answers, const DropFrame& frame);

/// Round marks along a scale, in metres, with what stands beside each: "0.5 m"; in feet where lengths are told in them.
struct ScaleMark {
    double at;
    std::string words;
};

/// From 0 to so far, no closer together than so many pixels.
std::vector<ScaleMark> scale_marks(double to, double pixels_per_metre, double least_apart);

}  // namespace baitwright
