#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

/// The words of a name or a note, to be compared as people say them: whatever the case, the plural, commas and hyphens
/// between them, and blanks between a number and its unit.
namespace baitwright {

struct LooseWord {
    std::string whole;       ///< in lower case: "pellets"
    std::string stem;        ///< what its singular and its plural share: "pellet", "berri"
    std::size_t at = 0;      ///< its first byte in the text
    std::size_t size = 0;    ///< its bytes there
    bool is_number = false;  ///< "4", "0.5"
};

/// A number and the letters behind it are two words: "4mm" has those of "4 mm". An apostrophe is passed over.
std::vector<LooseWord> loose_words(std::string_view text);

/// The same word, in the singular or the plural.
bool same_word(const LooseWord& a, const LooseWord& b);

/// Whether `word` begins with the letters of `said`, at least so many of them; a number never only begins.
bool begins_word(const LooseWord& said, const LooseWord& word, std::size_t fewest_letters = 3);

/// Whether the same words stand in both in the same order.
bool same_words(const std::vector<LooseWord>& a, const std::vector<LooseWord>& b);

}  // namespace baitwright
