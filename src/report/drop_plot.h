#pragma once

#include <string>

#include "answers/drop_answer.h"

namespace baitwright {

/// The drop as a picture (SVG), to scale: from the side with where it breaks, how the cloud widens and how thick it comes to lie
/// along the tow; from above the outlines that hold half and nine tenths of it.
std::string drop_plot(const DropAnswer& answer);

}  // namespace baitwright
