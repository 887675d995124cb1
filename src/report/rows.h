#pragma once

#include <string>
#include <vector>

namespace baitwright {

/// An answer as rows of cells for a spreadsheet, headings first, numbers unrounded with their unit in the heading.
using Rows = std::vector<std::vector<std::string>>;

}  // namespace baitwright
