#include <utf8proc.h>

#include <algorithm>

#include "report/text_table.h"

namespace baitwright {

std::size_t text_width(std::string_view text) {
    std::size_t width = 0;
    const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
    auto left = static_cast<utf8proc_ssize_t>(text.size());
    while (left > 0) {
        utf8proc_int32_t codepoint = 0;
        const utf8proc_ssize_t taken = utf8proc_iterate(bytes, left, &codepoint);
        if (taken <= 0) {
            ++width;
            ++bytes;
            --left;
            continue;
        }
        width += static_cast<std::size_t>(std::max(0, utf8proc_charwidth(codepoint)));
        bytes += taken;
        left -= taken;
    }
    return width;
}

}  // namespace baitwright
