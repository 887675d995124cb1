#pragma once

#include <string>
#include <vector>

/// The sheet for the tackle box as it is to be drawn: text that is already rounded for display, in the order in which
/// it is read. Whoever draws it works nothing out.
namespace baitwright {

/// One line of a sheet, from left to right; what is empty takes no room.
struct CardRow {
    std::string when;    ///< "07:35"
    std::string what;    ///< "brown crumb"; the only one that may run over several lines
    std::string amount;  ///< "435 g"
    std::string also;    ///< the same in another measure: "1.8 pt"
    enum class Tick { none, box } tick = Tick::none;
    std::vector<std::string> boxes;  ///< boxes to tick below the line, each with what stands beside it: "10:30"
};

struct CardSection {
    std::string heading;
    enum class Look { lines, two_columns, notes } look = Look::lines;
    std::vector<CardRow> rows;
    /// How soon rows are left out where the sheet is full even in its smallest letters: the highest first, 0 last.
    int spare_rank = 0;
    std::string where_else;  ///< where rows that were left out can be found: "baitwright plan lists them"
};

struct CardSheet {
    std::string title, subtitle;
    std::vector<CardSection> sections;
    std::string foot;
    std::string day;  ///< ISO 8601; the date a PDF carries, so that the same sheet has the same bytes
};

}  // namespace baitwright
