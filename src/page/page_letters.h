#pragma once

#include <string>
#include <string_view>

namespace baitwright {

/// Bytes as letters of ASCII that HTML and a script element leave alone, 13 bits in two of 91: an eighth less than
/// base64 adds. The page reads them by `letters.js`.
std::string page_letters(std::string_view bytes);

/// The text packed (zlib's format: RFC 1950), as letters.
std::string packed_letters(std::string_view text);

}  // namespace baitwright
