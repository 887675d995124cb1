#include "cli/roff.h"

#include <fmt/format.h>

#include <cstdint>

#include "quantities/plain_words.h"

namespace baitwright {

namespace {

/// What roff would take for something else, or print as another letter. **Source**: groff_char(7), groff_man_style(7).
std::string_view escape_of(char letter) {
    switch (letter) {
        case '\\':
            return "\\e";
        case '-':
            return "\\-";
        case '\'':
            return "\\(aq";
        case '`':
            return "\\(ga";
        case '^':
            return "\\(ha";
        case '~':
            return "\\(ti";
        case '"':
            return "\\(dq";
        case '\n':
            return " ";
        default:
            return {};
    }
}

/// The number of a letter of UTF-8 that has several bytes.
std::uint32_t code_of(std::string_view letter) {
    std::uint32_t code = static_cast<unsigned char>(letter.front()) & (0xFFU >> (letter.size() + 1));
    for (const char byte : letter.substr(1)) code = code << 6U | (static_cast<unsigned char>(byte) & 0x3FU);
    return code;
}

std::string upper(std::string_view text) {
    std::string result(text);
    for (char& letter : result)
        if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
    return result;
}

std::string in_font(char font, std::string_view text) {
    return text.empty() ? "" : fmt::format("\\f{}{}\\fR", font, in_roff(text));
}

}  // namespace

std::string in_roff(std::string_view text) {
    std::string roff = text.starts_with('.') ? "\\&" : "";
    while (!text.empty()) {
        const std::size_t size = letter_size(text);
        const std::string_view letter = text.substr(0, size == 0 ? 1 : size);
        if (const std::string_view escape = escape_of(letter.front()); !escape.empty())
            roff += escape;
        else if (size > 1)
            roff += fmt::format("\\[u{:04X}]", code_of(letter));
        else
            roff += size == 0 ? '?' : letter.front();
        text.remove_prefix(letter.size());
    }
    return roff;
}

RoffPage::RoffPage(std::string_view title, std::string_view day, std::string_view of)
    : text_(fmt::format(".TH {} 1 \"{}\" \"{}\" \"User commands\"\n", in_roff(upper(title)), day, in_roff(of))) {}

void RoffPage::section(std::string_view heading) {
    text_ += fmt::format(".SH {}\n", upper(heading));
}

void RoffPage::name_line(std::string_view name, std::string_view says) {
    text_ += fmt::format("{} \\- {}\n", in_roff(name), in_roff(says));
}

void RoffPage::subsection(std::string_view heading) {
    text_ += fmt::format(".SS {}\n", in_roff(heading));
}

bool RoffPage::below_heading() const {
    const std::string_view before = std::string_view(text_).substr(0, text_.size() - 1);
    const std::string_view line = before.substr(before.rfind('\n') + 1);
    return line.starts_with(".SH ") || line.starts_with(".SS ");
}

void RoffPage::prose(std::string_view text) {
    text_ += fmt::format("{}{}\n", below_heading() ? "" : ".PP\n", in_roff(text));
}

void RoffPage::synopsis(std::string_view typed, const std::vector<std::string>& stands_for) {
    text_ += fmt::format("{}{}", below_heading() ? "" : ".br\n", in_font('B', typed));
    for (const std::string& each : stands_for) text_ += " " + in_font('I', each);
    text_ += "\n";
}

void RoffPage::item(std::string_view typed, std::string_view takes, std::string_view text) {
    text_ += fmt::format(".TP\n{}{}{}\n{}\n", in_font('B', typed), typed.empty() || takes.empty() ? "" : " ",
                         in_font('I', takes), in_roff(text));
}

void RoffPage::typed(const std::vector<std::string>& lines) {
    text_ += below_heading() ? ".EX\n" : ".PP\n.EX\n";
    for (const std::string& line : lines) text_ += in_roff(line) + "\n";
    text_ += ".EE\n";
}

void RoffPage::see_also(const std::vector<std::string>& pages) {
    section("see also");
    for (std::size_t i = 0; i < pages.size(); ++i)
        text_ += fmt::format(".BR {} (1){}\n", in_roff(pages[i]), i + 1 < pages.size() ? "," : "");
}

}  // namespace baitwright
