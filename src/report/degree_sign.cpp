#include "report/degree_sign.h"

namespace baitwright {

namespace {

constexpr std::string_view plain = " deg", with_sign = " \u00b0";

TerminalLetters& letters_in_use() {
    static TerminalLetters letters = TerminalLetters::utf8;
    return letters;
}

bool is_letter(char byte) {
    return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z');
}

/// A number that is not quoted ends before `at`.
bool number_ends_at(std::string_view text, std::size_t at) {
    const auto before = text.substr(0, at).find_last_not_of("0123456789.-");
    const std::size_t start = before == std::string_view::npos ? 0 : before + 1;
    return start < at && (start == 0 || text[before] == ' ' || text[before] == '(');
}

}  // namespace

void write_for(TerminalLetters letters) {
    letters_in_use() = letters;
}

std::string with_degree_signs(std::string_view text) {
    std::string result;
    std::size_t done = 0;
    for (auto at = text.find(plain); at != std::string_view::npos; at = text.find(plain, at + plain.size())) {
        const std::size_t scale = at + plain.size(), after = scale + 1;
        if (scale >= text.size() || (text[scale] != 'C' && text[scale] != 'F')) continue;
        if (!number_ends_at(text, at) || (after < text.size() && is_letter(text[after]))) continue;
        result += text.substr(done, at - done);
        result += with_sign;
        done = scale;
    }
    return result += text.substr(done);
}

std::string for_terminal(std::string_view text) {
    if (letters_in_use() == TerminalLetters::utf8) return with_degree_signs(text);
    return in_letters_of_terminal(std::string(text));
}

std::string in_letters_of_terminal(const std::string& text) {
    return letters_in_use() == TerminalLetters::ascii_alone ? in_plain_letters(text) : text;
}

}  // namespace baitwright
