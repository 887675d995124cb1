#pragma once

#include <string>
#include <vector>

#include "answers/drop/drop_answer.h"
#include "report/drop_scale.h"

namespace baitwright {

/// The drop as a picture (SVG), to scale: from the side the cone from where it breaks to where it lies, with depths and
/// distances; where a tow draws it out, from above too; and what the two greys hold of it.
std::string drop_plot(const DropAnswer& answer, PictureWidth width = PictureWidth::page);
/// Several, one below the other, all to the same scale.
std::string drop_plot(const std::vector<DropAnswer>& answers, PictureWidth width = PictureWidth::page);

}  // namespace baitwright
