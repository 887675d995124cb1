#include "files/toml_writer.h"

namespace baitwright {

namespace {

/// The letter that stands behind the backslash, or 0 where the character has none of its own.
char escape_letter(char c) {
    constexpr std::string_view characters = "\"\\\n\r\t", letters = "\"\\nrt";
    const auto at = characters.find(c);
    return at == std::string_view::npos ? '\0' : letters[at];
}

void append_escaped(std::string& out, char c) {
    const auto byte = static_cast<unsigned char>(c);
    if (const char letter = escape_letter(c)) {
        out += '\\';
        out += letter;
    } else if (byte < 0x20U || byte == 0x7FU) {
        constexpr std::string_view hex_digits = "0123456789ABCDEF";
        out += "\\u00";
        out += hex_digits[byte >> 4U];
        out += hex_digits[byte & 0xFU];
    } else {
        out += c;
    }
}

}  // namespace

std::string toml_quoted(std::string_view text) {
    std::string result = "\"";
    for (const char c : text) append_escaped(result, c);
    return result + '"';
}

}  // namespace baitwright
