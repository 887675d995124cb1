#include "quantities/edit_distance.h"

#include <algorithm>
#include <vector>

namespace baitwright {

namespace {

bool continues_a_letter(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

/// The letters as the slices of the text that hold them: to compare them, nobody needs their code points.
std::vector<std::string_view> letters_of(std::string_view text) {
    std::vector<std::string_view> letters;
    for (std::size_t start = 0; start < text.size();) {
        std::size_t end = start + 1;
        while (end < text.size() && end < start + 4 && continues_a_letter(text[end])) ++end;
        letters.push_back(text.substr(start, end - start));
        start = end;
    }
    return letters;
}

}  // namespace

std::size_t letter_count(std::string_view text) {
    return letters_of(text).size();
}

std::size_t edit_distance(std::string_view a, std::string_view b) {
    const auto from = letters_of(a);
    const auto to = letters_of(b);
    // Row i holds the distances from the first i letters of `from` to the first 0, 1, 2... of `to`.
    std::vector<std::size_t> row_before_last(to.size() + 1);
    std::vector<std::size_t> last_row(to.size() + 1);
    std::vector<std::size_t> row(to.size() + 1);
    for (std::size_t j = 0; j <= to.size(); ++j) row[j] = j;
    for (std::size_t i = 1; i <= from.size(); ++i) {
        row_before_last.swap(last_row);
        last_row.swap(row);
        row[0] = i;
        for (std::size_t j = 1; j <= to.size(); ++j) {
            const std::size_t changed = last_row[j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
            row[j] = std::min({changed, last_row[j] + 1, row[j - 1] + 1});
            const bool swapped = i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1];
            if (swapped) row[j] = std::min(row[j], row_before_last[j - 2] + 1);
        }
    }
    return row[to.size()];
}

}  // namespace baitwright
