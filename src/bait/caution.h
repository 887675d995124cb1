#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baitwright {

/// A word an ingredient carries because it can hurt somebody, and the sentence that goes with it.
struct Caution {
    std::string_view word;      ///< as written in files: "dust", "pulse", "nuts"
    std::string_view sentence;  ///< what to do
    std::string_view brief;     ///< the heart of it, where room is short: "Fine dust: do not breathe it."
    std::string_view source;    ///< who says so
    bool allergen;              ///< named on the tub, one sentence for all of them
};

/// Every caution known, in the order in which they are shown.
const std::vector<Caution>& all_cautions();

/// The caution of that word, or null.
const Caution* find_caution(std::string_view word);

/// Stands among the cautions of an ingredient of which its allergens are known: it holds none of them.
inline constexpr std::string_view no_allergens = "no allergens";

/// What is told in place of the words of an ingredient whose allergens nobody stated; `caution_sentences` names it.
std::string allergens_not_known(std::string_view ingredient);

/// The sentences for these words, each once, allergens gathered into one sentence.
std::vector<std::string> caution_sentences(const std::vector<std::string>& words);

/// Such sentences where 'mix' says them in full for the same bait: dust and allergens put in one line, which still
/// names the allergens; every other caution as it is.
struct ShortCautions {
    std::vector<std::string> in_full;
    std::string in_short;  ///< "Fine dust, and allergens (fish, gluten): as 'mix' says in full."; may be empty
};
ShortCautions short_cautions(const std::vector<std::string>& sentences);

/// Such sentences in one line: the brief forms of those that have one, the others as they are.
std::string brief_cautions(const std::vector<std::string>& sentences);

}  // namespace baitwright
