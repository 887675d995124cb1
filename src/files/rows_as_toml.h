#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>

#include "files/position.h"

namespace baitwright {

/// The rows of a table as blocks [[ingredient]] of TOML, each on the line where it begins in the table, and which of
/// its places stands for which cell. So the rules for ingredients are written down once, for TOML.
class RowsAsToml {
public:
    void begin_row(int line, Position place);
    /// What follows, up to the next of its kind or the end of the row, belongs to a pack.
    void begin_pack(Position place);
    /// `key` may be dotted; `value` is TOML.
    void entry(Position place, std::string_view key, std::string_view value);
    void end_row();

    [[nodiscard]] std::string toml() const { return text_ + "]\n"; }
    /// The place in the table for a place in the TOML.
    [[nodiscard]] Position origin_of(Position place) const;

private:
    void append(std::string_view piece);
    /// What is appended next, up to the next mark, comes from there.
    void mark(Position place) { places_[{line_, column_}] = place; }

    std::string text_ = "ingredient = [";
    int line_ = 1, column_ = 15;
    std::string_view comma_;  ///< before the next entry
    bool in_pack_ = false;
    std::map<std::pair<int, int>, Position> places_;
};

}  // namespace baitwright
