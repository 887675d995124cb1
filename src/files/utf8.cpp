#include "files/utf8.h"

#include <algorithm>

#include "quantities/edit_distance.h"
#include "quantities/plain_words.h"

namespace baitwright {

std::optional<std::size_t> first_bad_byte(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t size = letter_size(text.substr(at));
        if (size == 0) return at;
        at += size;
    }
    return std::nullopt;
}

Position place_of_byte(std::string_view text, std::size_t byte) {
    const std::string_view before = without_byte_order_mark(text.substr(0, byte));
    const auto line_end = before.rfind('\n');
    const auto line_start = line_end == std::string_view::npos ? 0 : line_end + 1;
    return {static_cast<int>(1 + std::count(before.begin(), before.end(), '\n')),
            static_cast<int>(1 + letter_count(before.substr(line_start)))};
}

std::string_view without_byte_order_mark(std::string_view text) {
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    return text.substr(0, mark.size()) == mark ? text.substr(mark.size()) : text;
}

}  // namespace baitwright
