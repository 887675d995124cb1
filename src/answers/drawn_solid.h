#pragma once

#include "answers/water_range.h"
#include "bait/wetted_mix.h"

/// One draw of a solid from the spreads of its ingredient, by independent standard normals.
namespace baitwright {

/// The marks of a part that takes water, from three normals and the draw of the hand.
WaterMarks drawn_marks(const DoubtfulPart& part, double hand, const double* normals);

/// Loose and envelope density and size of its own, from three normals; its marks stay as they are.
void draw_body(SolidNumbers& solid, const Ingredient& ingredient, const double* normals);

}  // namespace baitwright
