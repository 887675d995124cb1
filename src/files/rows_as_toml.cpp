#include "files/rows_as_toml.h"

#include "quantities/edit_distance.h"

namespace baitwright {

void RowsAsToml::append(std::string_view piece) {
    text_ += piece;
    column_ += static_cast<int>(letter_count(piece));
}

void RowsAsToml::begin_row(int line, Position place) {
    if (line > line_) {
        text_.append(static_cast<std::size_t>(line - line_), '\n');
        line_ = line;
        column_ = 1;
    }
    mark(place);
    append("{ ");
    comma_ = "";
    in_pack_ = false;
}

void RowsAsToml::begin_pack(Position place) {
    if (!in_pack_) append(comma_);
    append(in_pack_ ? " }, " : "pack = [ ");
    mark(place);
    append("{ ");
    comma_ = "";
    in_pack_ = true;
}

void RowsAsToml::entry(Position place, std::string_view key, std::string_view value) {
    append(comma_);
    mark(place);
    append(key);
    append(" = ");
    append(value);
    comma_ = ", ";
}

void RowsAsToml::end_row() {
    append(in_pack_ ? " } ] }, " : " }, ");
}

Position RowsAsToml::origin_of(Position place) const {
    const auto behind = places_.upper_bound({place.line, place.column});
    return behind == places_.begin() ? Position{1, 1} : std::prev(behind)->second;
}

}  // namespace baitwright
