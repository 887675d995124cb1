#pragma once

#include <string>

#include "report/card_sheet.h"

namespace baitwright {

/// The drawing with what stands on it as `title` and `desc` (SVG 2, 5.7), for whoever cannot see shapes of letters.
std::string with_words(std::string svg, const CardSheet& sheet);

}  // namespace baitwright
