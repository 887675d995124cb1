#pragma once

#include "report/drop_scale.h"
#include "report/svg.h"

namespace baitwright {

/// The greys of the patch: where nine tenths of it lie, and where half does.
inline constexpr int grey_of_most = 216, grey_of_half = 150;

/// From the side: its way down, the cone from where it breaks to where it lies on the bed, depths at the side and
/// distances from where it goes in along the bed. `bed` is how far down the bed is drawn.
void draw_side(Svg& svg, const DropAnswer& answer, const DropFrame& frame, const MetreScale& scale, double bed);

}  // namespace baitwright
