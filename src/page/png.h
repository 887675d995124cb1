#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace baitwright {

/// Red, green and blue, 0 to 255 each.
using Pixel = std::array<unsigned char, 3>;

/// A picture as PNG, row by row from the top, of so many pixels across. It is packed for large even faces, which icons
/// have: each row as what it differs by from the one above, and runs of one byte as one.
/// **Source**: W3C, Portable Network Graphics (2nd ed.), sections 5, 9, 10; RFC 1950 and RFC 1951, section 3.2.6.
/// From memory. **Test**: a browser's own reading of it; the check values of CRC-32 and Adler-32.
std::string png(const std::vector<Pixel>& picture, int across);

/// CRC-32 as PNG has it (ISO 3309) and Adler-32 (RFC 1950), of bytes.
unsigned crc_32(std::string_view bytes);
unsigned adler_32(std::string_view bytes);

}  // namespace baitwright
