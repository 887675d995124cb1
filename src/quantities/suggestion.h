#pragma once

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

/// Lower case (ASCII), blanks trimmed and folded: how names are compared.
std::string folded_name(std::string_view name);

}  // namespace baitwright
