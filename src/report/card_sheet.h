#pragma once

#include <cstddef>
#include <string>
#include <vector>

/// The sheet for the tackle box as it is to be drawn: text that is already rounded for display, in the order in which
/// it is read. Whoever draws it works nothing out.
namespace baitwright {

/// Strokes in fives to strike through one by one, behind what they are of: "09:30: 40".
struct CardTally {
    std::string words;
    int strokes = 0;
};

/// One line of a sheet, from left to right; what is empty takes no room.
struct CardRow {
    std::string when;    ///< "07:35"
    std::string what;    ///< "brown crumb"; the only one that may run over several lines
    std::string amount;  ///< "435 g"
    std::string also;    ///< the same in another measure: "1.8 pt"
    enum class Tick { none, box } tick = Tick::none;
    std::vector<std::string> boxes;  ///< boxes to tick below the line, each with what stands beside it: "10:30"
    std::vector<CardTally> tallies;  ///< below the line, one under the other
};

struct CardSection {
    std::string heading;
    enum class Look { lines, two_columns, notes } look = Look::lines;
    std::vector<CardRow> rows;
    /// For the bench or for the water: a sheet of two pages has one for each, where they fit.
    enum class Side { bench, water } side = Side::bench;
    /// When it is cut short where the sheet is full even in its smallest letters; nothing that is needed at the water
    /// ever is. Jobs before the start are cut only where two pages do not hold them either.
    enum class Gives { never, cautions_in_full, doubled_weights, jobs } gives = Gives::never;
    std::vector<CardRow> in_short;  ///< what stands in place of its rows then; it says where they are
    std::size_t left_out = 0;       ///< how many of the rows are not in them
};

struct CardSheet {
    std::string title, subtitle;
    std::vector<CardSection> sections;
    std::string foot;
    std::string day;  ///< ISO 8601; the date a PDF carries, so that the same sheet has the same bytes
};

}  // namespace baitwright
