#include "card/svg_words.h"

namespace baitwright {

namespace {

std::string escaped(const std::string& text) {
    std::string safe;
    for (const char letter : text) {
        if (letter == '&')
            safe += "&amp;";
        else if (letter == '<')
            safe += "&lt;";
        else if (letter == '>')
            safe += "&gt;";
        else
            safe += letter;
    }
    return safe;
}

std::string words_of(const CardRow& row) {
    std::string words;
    const auto add = [&words](const std::string& text) {
        if (!text.empty()) words += (words.empty() ? "" : " ") + text;
    };
    add(row.when);
    add(row.what);
    add(row.amount);
    add(row.also);
    for (const std::string& box : row.boxes) add(box);
    for (const CardTally& tally : row.tallies) add(tally.words);
    return words;
}

}  // namespace

std::string with_words(std::string svg, const CardSheet& sheet) {
    std::string words = sheet.subtitle + "\n";
    for (const CardSection& section : sheet.sections) {
        if (section.rows.empty()) continue;
        words += section.heading + "\n";
        for (const CardRow& row : section.rows) words += words_of(row) + "\n";
    }
    words += sheet.foot;
    const auto opened = svg.find("<svg");
    const auto inside = svg.find('>', opened);
    if (opened == std::string::npos || inside == std::string::npos) return svg;
    svg.insert(inside + 1, "\n<title>" + escaped(sheet.title) + "</title>\n<desc>" + escaped(words) + "</desc>");
    svg.insert(inside, R"( role="img" xml:lang="en-GB")");
    return svg;
}

}  // namespace baitwright
