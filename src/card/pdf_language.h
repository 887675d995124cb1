#pragma once

#include <string>

namespace baitwright {

/// The PDF with its language named, and its title to stand above the window, by an incremental update (ISO 32000-1,
/// 7.5.6): cairo 1.16 tags a document but cannot say in which language it is. What is not a PDF with a plain table of
/// cross-references is returned as it is.
std::string with_language(std::string pdf);

}  // namespace baitwright
