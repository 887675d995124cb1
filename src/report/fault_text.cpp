#include "report/fault_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "quantities/plain_words.h"
#include "report/degree_sign.h"

namespace baitwright {

namespace {

/// The part of the line before a column counted in characters, with its tabs kept, so that the caret lines up.
std::string blanks_before(const std::string& line, int column) {
    std::string before;
    int characters = 0;
    for (std::size_t i = 0; i < line.size() && characters + 1 < column; ++i) {
        if ((static_cast<unsigned char>(line[i]) & 0xC0U) == 0x80U) continue;
        before += line[i] == '\t' ? '\t' : ' ';
        ++characters;
    }
    return before;
}

/// Each letter that a terminal would obey instead of showing as one "?", so that the caret stays where it belongs;
/// line ends of our own hints stay.
std::string harmless(std::string_view text) {
    std::string result;
    for (std::size_t at = 0;;) {
        const auto unfit = first_unfit_letter(text, LineBreaks::allowed, at);
        result += text.substr(at, unfit ? unfit->at - at : std::string_view::npos);
        if (!unfit) break;
        result += '?';
        at = unfit->at + unfit->size;
    }
    std::replace(result.begin(), result.end(), '\r', '?');
    return result;
}

/// A name of thousands of letters helps nobody.
std::string shortened(const std::string& message) {
    constexpr std::size_t most = 400;
    if (message.size() <= most) return message;
    std::size_t end = most;
    while (end > 0 && (static_cast<unsigned char>(message[end]) & 0xC0U) == 0x80U) --end;
    return message.substr(0, end) + "...";
}

}  // namespace

std::string fault_text(const std::vector<Fault>& faults) {
    std::string text;
    for (const Fault& fault : faults) {
        if (!fault.file.empty()) text += fault.file + ":";
        if (fault.line > 0) text += fmt::format("{}:", fault.line);
        if (fault.line > 0 && fault.column > 0) text += fmt::format("{}:", fault.column);
        text += (text.empty() || text.back() == '\n' ? "error: " : " error: ") +
                for_terminal(shortened(fault.message)) + "\n";
        if (!fault.source_line.empty()) {
            text += "    " + fault.source_line + "\n";
            if (fault.column > 0) text += "    " + blanks_before(fault.source_line, fault.column) + "^\n";
        }
        if (!fault.hint.empty()) text += "  hint: " + fault.hint + "\n";
    }
    return harmless(text);
}

}  // namespace baitwright
