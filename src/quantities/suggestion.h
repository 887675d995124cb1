#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baitwright {

/// The candidate nearest to a mistyped word: fewest single-letter edits and swaps of neighbours (optimal string
/// alignment), not more than a third of the word's letters and at least one allowed; a candidate that holds all the
/// word's blank-separated words counts as near. Case does not matter. Nothing where none is near enough.
std::optional<std::string> nearest_name(std::string_view word, const std::vector<std::string>& candidates);

/// A hint sentence: "did you mean 'brown crumb'?" or empty.
std::string did_you_mean(std::string_view word, const std::vector<std::string>& candidates);

/// The names that a person may have meant, best first and at most `most` of them: those that hold all the words
/// (`loose_words.h`) whole, then those where some are beginnings; only where no name holds the words those nearest in
/// letters, as a whole or word by word. Equally good ones stay in their order.
std::vector<std::string> names_near(std::string_view word, const std::vector<std::string>& candidates,
                                    std::size_t most);

/// A hint with names to choose from, at least one: "which of these: 'a', 'b'; type one of them". Six are told.
std::string which_of(const std::vector<std::string>& names);

/// The hint with all names that are near: "did you mean 'brown crumb'?" for one; empty for none.
std::string near_names_hint(std::string_view word, const std::vector<std::string>& candidates);

/// Lower case (ASCII), blanks trimmed and folded: how names are compared.
std::string folded_name(std::string_view name);

}  // namespace baitwright
