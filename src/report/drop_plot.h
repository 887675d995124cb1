#pragma once

#include <string>
#include <vector>

#include "answers/drop/drop_answer.h"

namespace baitwright {

/// How wide the picture is: for a printed page or a screen, or a phone held upright (340 pixels), in letters of the
/// same size.
enum class PictureWidth { page, phone };

/// The drop as a picture (SVG), to scale: from the side with where it breaks, how the cloud widens and how thick it
/// comes to lie along the tow; from above the outlines that hold half and nine tenths of it.
std::string drop_plot(const DropAnswer& answer, PictureWidth width = PictureWidth::page);
/// Several, one below the other, all to the same scale.
std::string drop_plot(const std::vector<DropAnswer>& answers, PictureWidth width = PictureWidth::page);

}  // namespace baitwright
