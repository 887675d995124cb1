#include "page/plain_words.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "page/first_answers.h"
#include "page/phone_words.h"
#include "page/plain_html.h"
#include "quantities/fault.h"
#include "quantities/worded.h"
#include "questions/shown_units_of.h"
#include "report/replies.h"
#include "report/shown_units.h"

namespace baitwright {

namespace {

using Piece = Told::Piece;
using PlainPieces = std::vector<Piece>;

constexpr std::array<std::string_view, 4> care_labels{"Breach", "Venue", "First", "Take care"};
/// What does not help at the tub; and what stands elsewhere on the page.
constexpr std::array<std::string_view, 5> left_out_of_plan{"By hand", "In swim", "Buy", "Cost", "Advice"};
constexpr std::array<std::string_view, 4> left_out_of_soak{"Portions", "Why", "Freezing", "Result"};

template <std::size_t count>
bool is_labelled(const Piece& piece, const std::array<std::string_view, count>& labels) {
    return piece.kind == Piece::Kind::line && std::find(labels.begin(), labels.end(), piece.label) != labels.end();
}

/// The pieces for which that holds; a line without a label goes with the labelled one above it.
template <class Holds>
PlainPieces pieces_where(const Told& told, Holds&& holds) {
    PlainPieces kept;
    bool keeps = true;
    for (const Piece& piece : told.pieces()) {
        if (piece.kind != Piece::Kind::line || !piece.label.empty()) keeps = holds(piece);
        if (keeps && piece.kind != Piece::Kind::gap) kept.push_back(piece);
    }
    return kept;
}

/// Without the columns of that name in its first row.
TextTable without_columns(const TextTable& table, std::initializer_list<std::string_view> names) {
    std::vector<std::size_t> kept;
    std::vector<TextTable::Align> columns;
    for (std::size_t i = 0; i < table.columns().size(); ++i) {
        const std::vector<std::string>& heads = table.rows().front();
        if (i < heads.size() && std::find(names.begin(), names.end(), heads[i]) != names.end()) continue;
        kept.push_back(i);
        columns.push_back(table.columns()[i]);
    }
    TextTable narrow(columns);
    for (const std::vector<std::string>& row : table.rows()) {
        std::vector<std::string> cells;
        for (const std::size_t i : kept)
            if (i < row.size()) cells.push_back(row[i]);
        if (!row.empty()) narrow.row(std::move(cells));
    }
    return narrow;
}

bool is_water(const Piece& piece) {
    return piece.kind == Piece::Kind::amounts && piece.label == "water";
}

PlainPieces mix_pieces(const MixAnswer& answer) {
    PlainPieces pieces =
        pieces_where(mix_reply(answer).told(), [](const Piece& piece) { return !is_labelled(piece, care_labels); });
    for (Piece& piece : pieces)
        if (piece.kind == Piece::Kind::table) piece.table = without_columns(piece.table, {"share", "cost"});
    return pieces;
}

PlainPieces plan_pieces(const Told& told) {
    return pieces_where(told, [](const Piece& piece) {
        return !is_labelled(piece, care_labels) && !is_labelled(piece, left_out_of_plan);
    });
}

/// When all of them are begun stands in the plan.
PlainPieces soak_pieces(const SoakAnswer& answer) {
    return pieces_where(soak_reply(answer).told(), [](const Piece& piece) {
        return piece.kind != Piece::Kind::table && piece.kind != Piece::Kind::heading &&
               !is_labelled(piece, care_labels) && !is_labelled(piece, left_out_of_soak);
    });
}

/// A page's words within a number of bytes.
class PlainWords {
public:
    void must_say(const PlainPieces& pieces) {
        for (const std::string& section : html_sections(pieces)) text_ += section;
    }
    void must_say(const std::string& html) { text_ += html; }
    /// In whole sections, as many as there is room for.
    void say(const PlainPieces& pieces) {
        for (const std::string& section : html_sections(pieces)) {
            full_ = full_ || text_.size() + section.size() + ending().size() > most_plain_words;
            if (!full_) text_ += section;
        }
    }
    [[nodiscard]] std::string text() const { return full_ ? text_ + ending() : text_; }

private:
    static std::string ending() { return html_paragraph("There is more of it on the page itself, once it is open."); }

    std::string text_;
    bool full_ = false;
};

void say_care(PlainWords& words, const Told& plan) {
    const PlainPieces care = pieces_where(plan, [](const Piece& piece) { return is_labelled(piece, care_labels); });
    if (care.empty()) return;
    Told head;
    head.heading("Take care");
    PlainPieces all = head.pieces();
    for (const Piece& piece : care) {
        all.push_back(piece);
        if (piece.label == "Take care") all.back().label.clear();
    }
    words.must_say(all);
}

std::string strategy_heading(const CarriedStrategy& carried) {
    return "<h1>" + html_text(carried.strategy.name) + "</h1>\n";
}

std::string words_of_strategy(const BankContents& contents, const CarriedStrategy& carried,
                              const std::optional<Venue>& venue) {
    const SessionPlan plan = first_plan(contents, carried, venue);
    const Told told = plan_reply(plan).told();
    PlainWords words;
    words.must_say(strategy_heading(carried));
    if (const auto mix = first_mix(contents, carried, plan)) words.must_say(mix_pieces(*mix));
    say_care(words, told);
    words.say(plan_pieces(told));
    if (const auto soaks = first_soaks(contents, *carried.shelf, plan)) words.say(soak_pieces(*soaks));
    return words.text();
}

/// What keeps a strategy from being planned is said in its place.
std::string words_or_why_not(const BankContents& contents, const CarriedStrategy& carried,
                             const std::optional<Venue>& venue) {
    try {
        return words_of_strategy(contents, carried, venue);
    } catch (const Error& error) {
        std::string text = strategy_heading(carried);
        for (const Fault& fault : error.faults()) text += html_paragraph(sentence(phone_words(fault.message)));
        return text;
    }
}

/// "silt bed, firm" and what of it is weighed and poured.
std::vector<std::string> litre_row(const MixAnswer& answer) {
    const Told told = mix_reply(answer).told();
    std::vector<std::string> row{answer.recipe + ", " + answer.feel, "", ""};
    for (const Piece& piece : told.pieces()) {
        if (piece.kind == Piece::Kind::table && row[1].empty()) row[1] = piece.table.rows().back().at(1);
        if (is_water(piece)) row[2] = piece.cells.front();
    }
    return row;
}

std::string words_of_library(const BankContents& contents) {
    using Align = TextTable::Align;
    TextTable table({Align::left, Align::right, Align::right});
    table.row({"mix, as it feels", "dry", "water"});
    for (const std::string& name : contents.library->recipe_names()) {
        try {
            table.row(litre_row(litre_of(contents, *contents.library, name)));
        } catch (const Error&) {
            continue;  // one that cannot be mixed as it stands; the page says why when it is asked
        }
    }
    return "<h1>What 1 l of each mix takes</h1>\n" + html_table(table);
}

}  // namespace

std::string plain_words(const BankContents& contents, const std::optional<Venue>& venue) {
    const WordedHere on_a_phone(WordsFor::phone);
    const UnitsShownHere as_usual(shown_units_of(Arguments({}, {}, contents.always)));
    if (contents.strategies.empty()) return words_of_library(contents);
    std::string text;
    for (const CarriedStrategy& carried : contents.strategies) text += words_or_why_not(contents, carried, venue);
    return text;
}

}  // namespace baitwright
