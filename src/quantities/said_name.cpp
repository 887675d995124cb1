#include "quantities/said_name.h"

#include <algorithm>
#include <set>

#include "quantities/in_quotes.h"
#include "quantities/loose_words.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

constexpr std::size_t fewest_said = 3;

std::size_t letters_in(const std::vector<LooseWord>& words) {
    std::size_t letters = 0;
    for (const LooseWord& word : words) letters += word.whole.size();
    return letters;
}

/// The last word that was said may be the beginning of the name's.
bool begins_name(const std::vector<LooseWord>& said, const std::vector<LooseWord>& name) {
    if (said.empty() || said.size() > name.size() || letters_in(said) < fewest_said) return false;
    if (!std::equal(said.begin(), said.end() - 1, name.begin(), same_word)) return false;
    const LooseWord& last = name[said.size() - 1];
    return same_word(said.back(), last) || begins_word(said.back(), last, 1);
}

/// The names that fit, each once.
template <class Fits>
SaidName those_that(const std::vector<std::string>& names, Fits fits) {
    SaidName found;
    std::set<std::string> met;
    for (const std::string& name : names)
        if (fits(name) && met.insert(folded_name(name)).second) found.several.push_back(name);
    if (found.several.size() == 1) {
        found.name = std::move(found.several.front());
        found.several.clear();
    }
    return found;
}

}  // namespace

SaidName said_name(std::string_view said, const std::vector<std::string>& names) {
    const std::string folded = folded_name(said);
    for (const std::string& name : names)
        if (folded_name(name) == folded) return {name, {}};
    const std::vector<LooseWord> words = loose_words(said);
    if (words.empty()) return {};
    SaidName found = those_that(names, [&](const std::string& name) { return same_words(words, loose_words(name)); });
    if (found.name || !found.several.empty()) return found;
    found = those_that(names, [&](const std::string& name) { return begins_name(words, loose_words(name)); });
    std::stable_partition(found.several.begin(), found.several.end(), [&](const std::string& name) {
        return folded_name(name).rfind(folded + ",", 0) == 0;  // "fishmeal, brown" before the pellets of fishmeal
    });
    return found;
}

bool said_alike(std::string_view a, std::string_view b) {
    const std::vector<LooseWord> words = loose_words(a);
    return words.empty() ? folded_name(a) == folded_name(b) : same_words(words, loose_words(b));
}

Fault fault_of_name(std::string_view said, const std::vector<std::string>& names, Fault none) {
    const std::vector<std::string> several = said_name(said, names).several;
    if (!several.empty()) {
        none.code = "several-fit";
        none.message = in_quotes(said) + " may be any of several";
        none.hint = which_of(several);
        return none;
    }
    if (std::string near = near_names_hint(said, names); !near.empty()) none.hint = std::move(near);
    return none;
}

}  // namespace baitwright
