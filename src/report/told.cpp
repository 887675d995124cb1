#include "report/told.h"

#include <algorithm>
#include <array>

#include "bait/caution.h"
#include "report/degree_sign.h"

namespace baitwright {

namespace {

using Kind = Told::Piece::Kind;

constexpr std::size_t told_label_width = 10, told_amounts_width = 13, step_width = 3;
/// Of a row: "07:35", then "5 min".
constexpr std::size_t first_cell_width = 6, next_cell_width = 7;

std::string to_left(const std::string& text, std::size_t width) {
    return text + std::string(width - std::min(width, text_width(text)), ' ');
}

std::string to_right(const std::string& text, std::size_t width) {
    return std::string(width - std::min(width, text_width(text)), ' ') + text;
}

std::string amounts_text(const Told::Piece& piece) {
    std::string text = "  " + to_left(piece.label, told_amounts_width);
    for (std::size_t i = 0; i < piece.cells.size(); ++i) text += (i ? "   " : "") + piece.cells[i];
    return text + "\n";
}

std::string row_text(const Told::Piece& piece) {
    std::string lead = "  ";
    for (std::size_t i = 0; i < piece.cells.size(); ++i)
        lead += to_right(piece.cells[i], i ? next_cell_width : first_cell_width) + "  ";
    return paragraph(lead, piece.text);
}

std::string piece_text(const Told::Piece& piece) {
    switch (piece.kind) {
        case Kind::title:
            return paragraph("", piece.text) + "\n";
        case Kind::heading:
            return piece.text + "\n";
        case Kind::say:
            return paragraph("", piece.text);
        case Kind::entry:
            return paragraph(piece.label, piece.text);
        case Kind::as_written:
            return piece.text;
        case Kind::line:
            return paragraph(to_left(piece.label, told_label_width), piece.text);
        case Kind::amounts:
            return amounts_text(piece);
        case Kind::row:
            return row_text(piece);
        case Kind::step:
            return paragraph(to_right(piece.label, step_width) + ". ", piece.text);
        case Kind::table:
            return piece.table.text();
        case Kind::gap:
            break;
    }
    return "\n";
}

std::string without_blanks(const std::string& text) {
    const auto from = text.find_first_not_of(' ');
    return from == std::string::npos ? std::string() : text.substr(from, text.find_last_not_of(' ') + 1 - from);
}

const char* kind_name(Kind kind) {
    constexpr std::array<const char*, 11> names{"title", "heading", "say",   "line",       "entry", "amounts",
                                                "row",   "step",    "table", "as_written", "gap"};
    return names[static_cast<std::size_t>(kind)];
}

Json columns_json(const TextTable& table) {
    Json columns = Json::array();
    for (const TextTable::Align align : table.columns())
        columns.push_back(align == TextTable::Align::left ? "left" : "right");
    return columns;
}

Json piece_json(const Told::Piece& piece) {
    Json json{{"kind", kind_name(piece.kind)}};
    if (const std::string label = without_blanks(piece.label); !label.empty()) json["label"] = label;
    for (const std::string& cell : piece.cells) json["cells"].push_back(without_blanks(cell));
    if (!piece.text.empty()) json["text"] = with_degree_signs(piece.text);
    if (piece.kind == Kind::table) {
        json["columns"] = columns_json(piece.table);
        json["rows"] = Json::array();
        for (const auto& row : piece.table.rows()) json["rows"].push_back(row);
    }
    return json;
}

}  // namespace

Told::Piece& Told::next(Piece::Kind kind) {
    Piece& piece = pieces_.emplace_back();
    piece.kind = kind;
    return piece;
}

void Told::title(std::string text) {
    if (!pieces_.empty() && pieces_.back().kind != Kind::title && pieces_.back().kind != Kind::gap) gap();
    next(Kind::title).text = std::move(text);
}

void Told::heading(std::string text) {
    steps_ = 0;
    next(Kind::heading).text = std::move(text);
}

void Told::say(std::string text) {
    next(Kind::say).text = std::move(text);
}

void Told::entry(std::string lead, std::string text) {
    Piece& piece = next(Kind::entry);
    piece.label = std::move(lead);
    piece.text = std::move(text);
}

void Told::as_written(std::string text) {
    next(Kind::as_written).text = std::move(text);
}

void Told::line(std::string label, std::string text) {
    Piece& piece = next(Kind::line);
    piece.label = std::move(label);
    piece.text = std::move(text);
}

void Told::mind(const std::vector<Warning>& warnings) {
    for (const Warning& warning : warnings) line("Mind", sentence(warning.message));
}

void Told::take_care(const std::vector<std::string>& cautions) {
    for (const std::string& caution : cautions) line("Take care", caution);
}

void Told::take_care_in_short(const std::vector<std::string>& cautions) {
    const ShortCautions told = short_cautions(cautions);
    take_care(told.in_full);
    if (!told.in_short.empty()) line("Take care", told.in_short);
}

void Told::amounts(std::string label, std::vector<std::string> cells) {
    Piece& piece = next(Kind::amounts);
    piece.label = std::move(label);
    piece.cells = std::move(cells);
}

void Told::row(std::vector<std::string> cells, std::string text) {
    Piece& piece = next(Kind::row);
    piece.cells = std::move(cells);
    piece.text = std::move(text);
}

void Told::step(std::string text) {
    Piece& piece = next(Kind::step);
    piece.label = std::to_string(++steps_);
    piece.text = std::move(text);
}

void Told::table(TextTable table) {
    next(Kind::table).table = std::move(table);
}

void Told::gap() {
    next(Kind::gap);
}

void Told::add(Told more) {
    pieces_.insert(pieces_.end(), std::make_move_iterator(more.pieces_.begin()),
                   std::make_move_iterator(more.pieces_.end()));
}

std::string Told::text() const {
    std::string text;
    for (const Piece& piece : pieces_) text += piece_text(piece);
    return text;
}

Json told_json(const Told& told) {
    Json json = Json::array();
    for (const Told::Piece& piece : told.pieces())
        if (piece.kind != Kind::gap) json.push_back(piece_json(piece));
    return json;
}

}  // namespace baitwright
