#include <utf8proc.h>

#include <algorithm>
#include <array>
#include <string>

#include "report/degree_sign.h"

namespace baitwright {

namespace {

struct PlainWord {
    char32_t letter;
    std::string_view words;
};

/// What an accent taken away does not make ASCII.
constexpr std::array plain_words_for{
    PlainWord{U'\u00a3', "GBP "}, PlainWord{U'\u20ac', "EUR "}, PlainWord{U'\u00b0', "deg"}, PlainWord{U'\u00d7', "x"},
    PlainWord{U'\u2013', "-"},    PlainWord{U'\u2014', "-"},    PlainWord{U'\u2018', "'"},   PlainWord{U'\u2019', "'"},
    PlainWord{U'\u201c', "\""},   PlainWord{U'\u201d', "\""},   PlainWord{U'\u2026', "..."}, PlainWord{U'\u00df', "ss"},
    PlainWord{U'\u00e6', "ae"},   PlainWord{U'\u00c6', "AE"},   PlainWord{U'\u00f8', "o"},   PlainWord{U'\u00d8', "O"},
    PlainWord{U'\u0142', "l"},    PlainWord{U'\u0141', "L"}};

constexpr utf8proc_int32_t first_beyond_ascii = 0x80, fraction_slash = 0x2044;

/// The letter without its accents, in ASCII, or "?".
std::string plain_letter(utf8proc_int32_t letter) {
    const auto* known = std::find_if(plain_words_for.begin(), plain_words_for.end(), [&](const PlainWord& word) {
        return word.letter == static_cast<char32_t>(letter);
    });
    if (known != plain_words_for.end()) return std::string(known->words);
    if (utf8proc_charwidth(letter) == 0) return {};  // an accent of its own, or a joiner
    std::array<utf8proc_int32_t, 32> parts{};
    int boundary = 0;
    const utf8proc_ssize_t count =
        utf8proc_decompose_char(letter, parts.data(), parts.size(),
                                static_cast<utf8proc_option_t>(UTF8PROC_DECOMPOSE | UTF8PROC_COMPAT), &boundary);
    std::string text;
    const auto known_parts = std::min<utf8proc_ssize_t>(count, static_cast<utf8proc_ssize_t>(parts.size()));
    for (utf8proc_ssize_t i = 0; i < known_parts; ++i) {
        const utf8proc_int32_t part = parts.at(static_cast<std::size_t>(i));
        if (part < first_beyond_ascii)
            text += static_cast<char>(part);
        else if (part == fraction_slash)
            text += '/';
    }
    return text.empty() ? "?" : text;
}

}  // namespace

std::string in_plain_letters(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        utf8proc_int32_t letter = 0;
        const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
        const utf8proc_ssize_t taken = utf8proc_iterate(bytes, static_cast<utf8proc_ssize_t>(text.size()), &letter);
        if (taken > 0 && letter < first_beyond_ascii)
            result += static_cast<char>(letter);
        else
            result += taken > 0 ? plain_letter(letter) : "?";
        text.remove_prefix(static_cast<std::size_t>(std::max<utf8proc_ssize_t>(taken, 1)));
    }
    return result;
}

}  // namespace baitwright
