#include "cli/colour.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace baitwright {

namespace {

// **Source**: ECMA-48, 5th edition, 8.3.117, select graphic rendition: 1 is bold, 31 red, 33 yellow, 0 as before.
constexpr std::string_view bold = "\033[1m", warning = "\033[1;33m", fault = "\033[1;31m", plain = "\033[0m";

std::string marked(std::string_view line, std::size_t from, std::size_t to, std::string_view mark) {
    return std::string(line.substr(0, from)) + std::string(mark) + std::string(line.substr(from, to - from)) +
           std::string(plain) + std::string(line.substr(to));
}

/// Water is told as a volume; where a narrow table breaks "in all, before water" in two, a weight follows.
bool is_volume(std::string_view cells) {
    const std::string_view first = cells.substr(0, cells.find("  "));
    constexpr std::array<std::string_view, 4> units{" ml", " l", " pt", " fl oz"};
    return std::any_of(units.begin(), units.end(), [&](std::string_view unit) { return first.ends_with(unit); });
}

/// "Pour      510 ml, rest 20 min": up to the comma; "  water        720 ml   1.3 pt": all of it.
std::string coloured_line(std::string_view line) {
    constexpr std::string_view pour = "Pour  ", water = "  water  ";
    constexpr std::array<std::string_view, 2> warnings{"Mind  ", "Take care "};
    const auto end_of = [&](std::string_view label) { return line.find_first_not_of(' ', label.size()); };
    if (line.starts_with(pour) && end_of(pour) != std::string_view::npos)
        return marked(line, end_of(pour), std::min(line.find_first_of(",:", end_of(pour)), line.size()), bold);
    if (line.starts_with(water) && end_of(water) != std::string_view::npos && is_volume(line.substr(end_of(water))))
        return marked(line, end_of(water), line.size(), bold);
    for (const std::string_view label : warnings)
        if (line.starts_with(label)) return marked(line, 0, label.find(' ', label.size() - 2), warning);
    return std::string(line);
}

std::string error_line(std::string_view line) {
    constexpr std::string_view word = "error: ";
    const auto at = line.find(word);
    const bool begins = at == 0 || (at != std::string_view::npos && at > 1 && line.substr(at - 2, 2) == ": ");
    return begins && line.front() != ' ' ? marked(line, at, at + word.size() - 1, fault) : std::string(line);
}

std::string by_lines(std::string_view text, std::string (*dressed)(std::string_view)) {
    std::string result;
    while (!text.empty()) {
        const auto end = text.find('\n');
        result += dressed(text.substr(0, end));
        if (end == std::string_view::npos) break;
        result += '\n';
        text.remove_prefix(end + 1);
    }
    return result;
}

}  // namespace

std::string coloured_answer(const std::string& told) {
    return by_lines(told, coloured_line);
}

std::string coloured_errors(const std::string& told) {
    return by_lines(told, error_line);
}

}  // namespace baitwright
