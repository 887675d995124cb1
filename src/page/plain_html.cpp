#include "page/plain_html.h"

#include <fmt/format.h>

#include <cstdint>

#include "report/degree_sign.h"

namespace baitwright {

namespace {

using Piece = Told::Piece;
using Kind = Told::Piece::Kind;

std::string element(std::string_view name, std::string_view inside) {
    return fmt::format("<{0}>{1}</{0}>", name, inside);
}

std::string cell_element(std::string_view name, TextTable::Align align, std::string_view text) {
    const char* const right = align == TextTable::Align::right ? " align=\"right\"" : "";
    return fmt::format("<{0}{1}>{2}</{0}>", name, right, html_text(text));
}

/// A letter of UTF-8 and how many bytes it has; what is no such letter counts as one byte and is replaced.
struct Letter {
    std::uint32_t code = 0xfffdu;
    std::size_t bytes = 1;
};

Letter letter_at(std::string_view text, std::size_t at) {
    const auto byte = [&](std::size_t i) { return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i])); };
    const std::uint32_t first = byte(at);
    if (first < 0x80u) return {first, 1};
    const std::size_t bytes = first >= 0xf0u ? 4 : first >= 0xe0u ? 3 : 2;
    if (first < 0xc2u || first > 0xf4u || at + bytes > text.size()) return {};
    std::uint32_t code = first & (0xffu >> (bytes + 1));
    for (std::size_t i = 1; i < bytes; ++i) {
        if ((byte(at + i) & 0xc0u) != 0x80u) return {};
        code = (code << 6u) | (byte(at + i) & 0x3fu);
    }
    return {code, bytes};
}

/// "Soak: 6 min under water".
std::string labelled(const Piece& piece, std::string_view text) {
    const auto from = piece.label.find_first_not_of(' ');
    if (from == std::string::npos) return std::string(text);
    std::string label = piece.label.substr(from, piece.label.find_last_not_of(" :") + 1 - from);
    return label == "-" ? std::string(text) : label + ": " + std::string(text);
}

std::string amounts_of(const Piece& piece) {
    std::string text;
    for (const std::string& cell : piece.cells) text += (text.empty() ? "" : "; ") + cell;
    return text;
}

std::string html_row(std::string_view cell, const Piece& piece) {
    std::string cells;
    for (const std::string& one : piece.cells) cells += cell_element(cell, TextTable::Align::right, one);
    return element("tr", cells + cell_element(cell, TextTable::Align::left, piece.text));
}

/// What a piece becomes that stands by itself.
std::string html_piece(const Piece& piece) {
    switch (piece.kind) {
        case Kind::title:
            return element("h2", html_text(piece.text));
        case Kind::heading:
            return element("h3", html_text(piece.text));
        case Kind::table:
            return html_table(piece.table);
        case Kind::amounts:
            return html_paragraph(labelled(piece, amounts_of(piece)));
        case Kind::gap:
            return {};
        case Kind::say:
        case Kind::line:
        case Kind::entry:
        case Kind::row:
        case Kind::step:
        case Kind::as_written:
            break;
    }
    return html_paragraph(piece.kind == Kind::step ? piece.text : labelled(piece, piece.text));
}

/// Neighbours that are one list or one table together.
bool is_step(const Piece& piece) {
    return piece.kind == Kind::step;
}
bool is_celled_row(const Piece& piece) {
    return piece.kind == Kind::row && !piece.cells.empty();
}

using Pieces = std::vector<Piece>;

/// Where the run of such pieces ends that begins there.
std::size_t end_of_run(const Pieces& pieces, std::size_t at, bool (*belongs)(const Piece&)) {
    while (at < pieces.size() && belongs(pieces[at])) ++at;
    return at;
}

std::string html_steps(const Pieces& pieces, std::size_t from, std::size_t to) {
    std::string items;
    for (std::size_t i = from; i < to; ++i) items += element("li", html_text(pieces[i].text));
    return element("ol", items);
}

/// The first row says what the columns are.
std::string html_rows(const Pieces& pieces, std::size_t from, std::size_t to) {
    std::string rows;
    for (std::size_t i = from; i < to; ++i) rows += html_row(i == from ? "th" : "td", pieces[i]);
    return element("table", rows);
}

}  // namespace

std::string html_text(std::string_view text) {
    const std::string shown = with_degree_signs(text);
    std::string html;
    for (std::size_t at = 0; at < shown.size();) {
        const Letter letter = letter_at(shown, at);
        at += letter.bytes;
        const char plain = static_cast<char>(letter.code);
        const bool kept = (letter.code >= 0x20u && letter.code < 0x7fu) || plain == '\n';
        if (kept && plain != '<' && plain != '>' && plain != '&' && plain != '"' && plain != '\'')
            html += plain;
        else
            html += fmt::format("&#{};", letter.code);
    }
    return html;
}

std::string html_paragraph(std::string_view text) {
    return element("p", html_text(text)) + "\n";
}

std::string html_table(const TextTable& table) {
    std::string rows;
    for (const std::vector<std::string>& row : table.rows()) {
        if (row.empty()) continue;
        std::string cells;
        for (std::size_t i = 0; i < table.columns().size(); ++i)
            cells += cell_element(rows.empty() ? "th" : "td", table.columns()[i], i < row.size() ? row[i] : "");
        rows += element("tr", cells) + "\n";
    }
    return element("table", rows) + "\n";
}

std::vector<std::string> html_sections(const Pieces& pieces) {
    std::vector<std::string> sections;
    for (std::size_t at = 0; at < pieces.size();) {
        const Kind kind = pieces[at].kind;
        if (sections.empty() || kind == Kind::title || kind == Kind::heading) sections.emplace_back();
        std::string& section = sections.back();
        if (const std::size_t steps = end_of_run(pieces, at, is_step); steps > at) {
            section += html_steps(pieces, at, steps) + "\n";
            at = steps;
        } else if (const std::size_t rows = end_of_run(pieces, at, is_celled_row); rows > at) {
            section += html_rows(pieces, at, rows) + "\n";
            at = rows;
        } else {
            section += html_piece(pieces[at++]);
        }
    }
    return sections;
}

}  // namespace baitwright
