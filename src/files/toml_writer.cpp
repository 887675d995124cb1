#include "files/toml_writer.h"

#include <cstdio>

namespace baitwright {

namespace {

std::string escaped(char c) {
    switch (c) {
        case '"':
            return "\\\"";
        case '\\':
            return "\\\\";
        case '\n':
            return "\\n";
        case '\r':
            return "\\r";
        case '\t':
            return "\\t";
        default:
            break;
    }
    const auto byte = static_cast<unsigned char>(c);
    if (byte >= 0x20U && byte != 0x7FU) return std::string(1, c);
    char code[8];
    std::snprintf(code, sizeof code, "\\u%04X", static_cast<unsigned>(byte));
    return code;
}

}  // namespace

std::string toml_quoted(std::string_view text) {
    std::string result = "\"";
    for (const char c : text) result += escaped(c);
    return result + '"';
}

}  // namespace baitwright
