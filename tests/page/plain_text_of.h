#pragma once

#include <algorithm>
#include <cstdint>
#include <set>
#include <string>
#include <vector>

/// Reads back the plain HTML of a page, for its tests.

/// A code point in UTF-8 (RFC 3629).
inline std::string utf8_of(std::uint32_t code) {
    const auto tail = [&](unsigned shift) { return static_cast<char>(0x80u | ((code >> shift) & 0x3fu)); };
    if (code < 0x80u) return {static_cast<char>(code)};
    if (code < 0x800u) return {static_cast<char>(0xc0u | (code >> 6u)), tail(0)};
    if (code < 0x10000u) return {static_cast<char>(0xe0u | (code >> 12u)), tail(6), tail(0)};
    return {static_cast<char>(0xf0u | (code >> 18u)), tail(12), tail(6), tail(0)};
}

inline std::string without_references(const std::string& html) {
    std::string text;
    for (std::size_t at = 0; at < html.size(); ++at) {
        if (html.compare(at, 2, "&#") != 0) {
            text += html[at];
            continue;
        }
        const auto end = html.find(';', at);
        text += utf8_of(static_cast<std::uint32_t>(std::stoul(html.substr(at + 2, end - at - 2))));
        at = end;
    }
    return text;
}

inline std::string trimmed_cell(const std::string& text) {
    const auto from = text.find_first_not_of(" \n");
    return from == std::string::npos ? "" : text.substr(from, text.find_last_not_of(" \n") + 1 - from);
}

/// What stands between two tags, each that is not blank, in its order.
inline std::vector<std::string> plain_lines(const std::string& html) {
    std::vector<std::string> lines;
    for (std::size_t at = 0; at < html.size();) {
        const auto tag = std::min(html.find('<', at), html.size());
        if (std::string line = trimmed_cell(html.substr(at, tag - at)); !line.empty())
            lines.push_back(without_references(line));
        at = std::min(html.find('>', tag), html.size() - 1) + 1;
    }
    return lines;
}

/// The first tag that is not allowed, not closed, or not in its place; or a letter that is not ASCII. Empty where all
/// is well.
inline std::string unfit_markup(const std::string& html) {
    static const std::set<std::string> allowed{"h1", "h2", "h3", "p", "ol", "li", "table", "tr", "th", "td"};
    static const std::set<std::string> inside{"li", "tr", "th", "td"};
    std::vector<std::string> open;
    for (const char letter : html)
        if (static_cast<unsigned char>(letter) > 126) return "a letter beyond ASCII";
    for (std::size_t at = html.find('<'); at != std::string::npos; at = html.find('<', at + 1)) {
        std::string tag = html.substr(at + 1, html.find('>', at) - at - 1);
        if (tag[0] == '/') {
            if (open.empty() || open.back() != tag.substr(1)) return tag;
            open.pop_back();
            continue;
        }
        if (const auto right = tag.find(" align=\"right\""); right == 2) tag.resize(2);
        if (allowed.count(tag) == 0 || (open.empty() && inside.count(tag) > 0)) return tag;
        open.push_back(tag);
    }
    return open.empty() ? "" : open.back();
}
