#include "quantities/plain_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "quantities/edit_distance.h"

namespace baitwright {

namespace {

constexpr std::size_t most_letters = 200;

/// How a letter that begins with a byte from `first` to `last` goes on: so many bytes, the first of them in a range.
/// **Source**: RFC 3629, section 4 (from memory).
struct LetterForm {
    unsigned char first, last;
    unsigned char more;
    unsigned char second_low, second_high;
};
constexpr std::array<LetterForm, 9> letter_forms{{
    {0x00, 0x7F, 0, 0, 0},
    {0xC2, 0xDF, 1, 0x80, 0xBF},
    {0xE0, 0xE0, 2, 0xA0, 0xBF},
    {0xE1, 0xEC, 2, 0x80, 0xBF},
    {0xED, 0xED, 2, 0x80, 0x9F},
    {0xEE, 0xEF, 2, 0x80, 0xBF},
    {0xF0, 0xF0, 3, 0x90, 0xBF},
    {0xF1, 0xF3, 3, 0x80, 0xBF},
    {0xF4, 0xF4, 3, 0x80, 0x8F},
}};

using Why = UnfitLetter::Why;

struct UnfitRange {
    char32_t first, last;
    Why why;
};
constexpr std::array<UnfitRange, 17> unfit_ranges{{
    {0x0000, 0x001F, Why::control},
    {0x007F, 0x009F, Why::control},
    {0x00AD, 0x00AD, Why::zero_width},  // soft hyphen
    {0x034F, 0x034F, Why::zero_width},  // combining grapheme joiner
    {0x061C, 0x061C, Why::direction},
    {0x115F, 0x1160, Why::zero_width},  // fillers
    {0x180E, 0x180E, Why::zero_width},
    {0x200B, 0x200D, Why::zero_width},
    {0x200E, 0x200F, Why::direction},
    {0x2028, 0x2029, Why::control},  // separators of lines and paragraphs
    {0x202A, 0x202E, Why::direction},
    {0x2060, 0x2065, Why::zero_width},
    {0x2066, 0x206F, Why::direction},
    {0xFDD0, 0xFDEF, Why::no_character},
    {0xFEFF, 0xFEFF, Why::zero_width},
    {0xFFF9, 0xFFFB, Why::control},       // interlinear annotation
    {0xE0000, 0xE007F, Why::zero_width},  // tags
}};

char32_t code_of(std::string_view letter) {
    const auto lead = static_cast<unsigned char>(letter[0]);
    if (letter.size() == 1) return lead;
    char32_t code = lead & (0xFFU >> (letter.size() + 1));
    for (const char more : letter.substr(1)) code = code << 6U | (static_cast<unsigned char>(more) & 0x3FU);
    return code;
}

std::optional<Why> why_unfit(char32_t code, LineBreaks line_breaks) {
    if (line_breaks == LineBreaks::allowed && (code == '\n' || code == '\r' || code == '\t')) return std::nullopt;
    if ((code & 0xFFFEU) == 0xFFFEU) return Why::no_character;
    for (const UnfitRange& range : unfit_ranges)
        if (code >= range.first && code <= range.last) return range.why;
    return std::nullopt;
}

bool is_plain_ascii(char byte) {
    return byte >= 0x20 && byte < 0x7F;
}

/// The byte behind so many letters of UTF-8; all of the text where it has no more.
std::size_t end_of_letters(std::string_view text, std::size_t letters) {
    std::size_t end = 0;
    for (; letters > 0 && end < text.size(); --letters) end += letter_size(text.substr(end));
    return end;
}

const char* name_of_unfit(Why why) {
    switch (why) {
        case Why::no_utf8:
            return "bytes that are no letters of UTF-8";
        case Why::control:
            return "a control character or a line break";
        case Why::direction:
            return "a mark that turns the direction of writing";
        case Why::zero_width:
            return "a letter without width, which nobody sees";
        case Why::no_character:
            break;
    }
    return "a code that is no letter";
}

}  // namespace

std::size_t letter_size(std::string_view text) {
    const auto byte_at = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
    for (const LetterForm& form : letter_forms) {
        if (byte_at(0) < form.first || byte_at(0) > form.last) continue;
        if (form.more == 0) return 1;
        if (text.size() <= form.more) return 0;
        if (byte_at(1) < form.second_low || byte_at(1) > form.second_high) return 0;
        for (std::size_t i = 2; i <= form.more; ++i)
            if ((byte_at(i) & 0xC0U) != 0x80U) return 0;
        return std::size_t{1} + form.more;
    }
    return 0;
}

std::optional<UnfitLetter> first_unfit_letter(std::string_view text, LineBreaks line_breaks, std::size_t from) {
    for (std::size_t at = from; at < text.size();) {
        if (is_plain_ascii(text[at])) {
            ++at;
            continue;
        }
        const std::size_t size = letter_size(text.substr(at));
        if (size == 0) return UnfitLetter{at, 1, Why::no_utf8, static_cast<unsigned char>(text[at])};
        const char32_t code = code_of(text.substr(at, size));
        if (const auto why = why_unfit(code, line_breaks)) return UnfitLetter{at, size, *why, code};
        at += size;
    }
    return std::nullopt;
}

std::string unfit_in(std::string_view text, LineBreaks line_breaks) {
    const auto unfit = first_unfit_letter(text, line_breaks);
    return unfit ? name_of_unfit(unfit->why) : std::string();
}

std::string refused_as_name(std::string_view text) {
    if (text.find_first_not_of(' ') == std::string_view::npos) return "is empty";
    const bool all_plain = std::all_of(text.begin(), text.end(), is_plain_ascii);
    if (!all_plain)
        if (const std::string unfit = unfit_in(text); !unfit.empty()) return "holds " + unfit;
    if ((all_plain ? text.size() : letter_count(text)) > most_letters) return "is longer than 200 letters";
    if (text.find('/') != std::string_view::npos) return "holds a '/', which would make it a path";
    if (text.size() >= 5 && text.substr(text.size() - 5) == ".toml") return "ends in .toml, which would make it a file";
    if (text.front() == '-') return "begins with '-', which would make it a flag";
    return {};
}

std::string mended_name(std::string name) {
    if (refused_as_name(name).empty()) return name;
    name = written_out(name);
    std::replace(name.begin(), name.end(), '/', '-');
    if (const auto dots = name.rfind(".toml"); dots != std::string::npos && dots + 5 == name.size()) name.resize(dots);
    name.erase(0, name.find_first_not_of("- "));
    name.resize(end_of_letters(name, most_letters));
    return name.empty() ? "without a name" : name;
}

std::string written_out(std::string_view text, LineBreaks line_breaks) {
    std::string result;
    std::size_t done = 0;
    for (auto unfit = first_unfit_letter(text, line_breaks); unfit;
         unfit = first_unfit_letter(text, line_breaks, done)) {
        result += text.substr(done, unfit->at - done);
        const auto code = static_cast<std::uint32_t>(unfit->code);
        result += unfit->why == Why::no_utf8 ? fmt::format("\\x{:02x}", code)
                  : code > 0xFFFFU           ? fmt::format("\\U{:08x}", code)
                                             : fmt::format("\\u{:04x}", code);
        done = unfit->at + unfit->size;
    }
    return result += text.substr(done);
}

}  // namespace baitwright
