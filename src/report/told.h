#pragma once

#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "report/json.h"
#include "report/text_table.h"

namespace baitwright {

/// An answer as it is told to a person, piece by piece in reading order. All is rounded and worded already: a terminal
/// breaks the pieces into lines of 80 columns, a page sets the same words its own way, and so the two cannot disagree.
class Told {
public:
    struct Piece {
        enum class Kind {
            title,
            heading,
            say,
            line,
            entry,
            amounts,
            row,
            step,
            table,
            as_written,
            gap
        } kind = Kind::gap;
        std::string label;  ///< of a line, entry or amounts: "Makes"; the number of a step
        std::vector<std::string>
            cells;  ///< of a row: what stands before the text, "07:35", "5 min"; of amounts: the amounts
        std::string text;
        TextTable table{{}};
    };

    /// What is told: "silt bed, firm: 3 l riddled". On a terminal an empty line keeps it from what stands around it.
    void title(std::string text);
    /// Over what follows: "Do this".
    void heading(std::string text);
    /// A paragraph by itself.
    void say(std::string text);
    /// One of a list, behind what it begins with, blanks and all: "  - ", "brown crumb: ".
    void entry(std::string lead, std::string text);
    /// Word for word, line for line: a file's text, a label to cut out.
    void as_written(std::string text);
    /// A paragraph behind its word: "Makes", "Begin". Without a word it goes on from the line before.
    void line(std::string label, std::string text);
    /// What the person should know about the answer, a line each.
    void mind(const std::vector<Warning>& warnings);
    /// What can hurt, a line each.
    void take_care(const std::vector<std::string>& cautions);
    /// The same where another answer of the same bait says it in full: dust and allergens in one line, all else in
    /// full.
    void take_care_in_short(const std::vector<std::string>& cautions);
    /// Amounts that mean the same, or belong together, in one line under a table: "water", "735 g", "1.3 pt".
    void amounts(std::string label, std::vector<std::string> cells);
    /// A line of a list: short cells to the right, then text: "07:35", "5 min", "riddle silt bed".
    void row(std::vector<std::string> cells, std::string text);
    /// A numbered one; they count from 1 after each heading.
    void step(std::string text);
    void table(TextTable table);
    /// An empty line on a terminal.
    void gap();
    /// Everything of another telling after this.
    void add(Told more);

    [[nodiscard]] const std::vector<Piece>& pieces() const { return pieces_; }
    /// For a terminal, at most 80 columns.
    [[nodiscard]] std::string text() const;

private:
    Piece& next(Piece::Kind kind);

    std::vector<Piece> pieces_;
    int steps_ = 0;
};

/// [{kind, label, cells, text, columns, rows}]; what a kind does not have is left out. `columns` are "left" and
/// "right"; an empty row is a rule. Gaps are left out.
Json told_json(const Told& told);

}  // namespace baitwright
