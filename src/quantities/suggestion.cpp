#include "quantities/suggestion.h"

#include <algorithm>

#include "quantities/edit_distance.h"
#include "quantities/loose_words.h"
#include "quantities/sort_stably.h"

namespace baitwright {

namespace {

/// Nobody mistypes a word longer than this, and the cost of comparing grows with the square.
constexpr std::size_t longest_word = 80;

bool is_blank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Takes the first word off a folded name.
std::string_view take_word(std::string_view& folded) {
    const auto end = std::min(folded.find(' '), folded.size());
    const auto word = folded.substr(0, end);
    folded.remove_prefix(std::min(end + 1, folded.size()));
    return word;
}

/// Holds the word, or a word that starts with it where it has at least three letters: "fish" is in "fishmeal".
bool holds_word(std::string_view folded, std::string_view word) {
    while (!folded.empty()) {
        const auto own = take_word(folded);
        if (own == word || (word.size() >= 3 && own.substr(0, word.size()) == word)) return true;
    }
    return false;
}

bool holds_all_words(std::string_view folded, std::string_view words) {
    while (!words.empty()) {
        if (!holds_word(folded, take_word(words))) return false;
    }
    return true;
}

/// Near enough in letters; words that share no letter at all are not, however short.
bool is_near(std::string_view word, std::string_view candidate, std::size_t distance) {
    const std::size_t letters = letter_count(word);
    const std::size_t allowed = std::max<std::size_t>(1, letters / 3);
    return distance <= allowed && distance < std::max(letters, letter_count(candidate));
}

bool holds(const std::vector<LooseWord>& name, const LooseWord& said,
           bool (*fits)(const LooseWord&, const LooseWord&)) {
    return std::any_of(name.begin(), name.end(), [&](const LooseWord& word) { return fits(said, word); });
}

bool is_or_begins(const LooseWord& said, const LooseWord& word) {
    return same_word(said, word) || begins_word(said, word);
}

/// 0 where the name holds all the words whole, 1 where some are beginnings, nothing else.
std::optional<std::size_t> rank_by_words(const std::vector<LooseWord>& said, const std::vector<LooseWord>& name) {
    const auto held = [&](auto fits) {
        return std::all_of(said.begin(), said.end(), [&](const LooseWord& word) { return holds(name, word, fits); });
    };
    if (held(same_word)) return 0;
    return held(is_or_begins) ? std::optional<std::size_t>(1) : std::nullopt;
}

std::string in_one_line(const std::vector<LooseWord>& words) {
    std::string line;
    for (const LooseWord& word : words) line += (line.empty() ? "" : " ") + word.whole;
    return line;
}

std::optional<std::size_t> letters_apart(const std::string& said, const std::string& name) {
    const std::size_t sizes_apart = said.size() > name.size() ? said.size() - name.size() : name.size() - said.size();
    if (sizes_apart > said.size() / 3 + 1) return std::nullopt;
    const std::size_t distance = edit_distance(said, name);
    return is_near(said, name, distance) ? std::optional(distance) : std::nullopt;
}

/// How far a word is from the nearest of the name's; short ones and numbers must be right.
std::optional<std::size_t> letters_off(const LooseWord& said, const std::vector<LooseWord>& name) {
    std::optional<std::size_t> least;
    for (const LooseWord& word : name) {
        std::optional<std::size_t> apart;
        if (same_word(said, word))
            apart = 0;
        else if (!said.is_number && !word.is_number && said.whole.size() >= 4)
            apart = letters_apart(said.whole, word.whole);
        if (apart && (!least || *apart < *least)) least = apart;
    }
    return least;
}

/// Names as a whole come before those of which only the words are near.
std::optional<std::size_t> rank_by_letters(const std::vector<LooseWord>& said, const std::vector<LooseWord>& name) {
    if (const auto whole = letters_apart(in_one_line(said), in_one_line(name))) return *whole;
    std::size_t all = longest_word;
    for (const LooseWord& word : said) {
        const auto off = letters_off(word, name);
        if (!off) return std::nullopt;
        all += *off;
    }
    return all;
}

struct RankedName {
    std::size_t rank;
    const std::string* name;
};

using RankOfName = std::optional<std::size_t> (*)(const std::vector<LooseWord>&, const std::vector<LooseWord>&);

std::vector<RankedName> ranked_names(const std::vector<LooseWord>& said, const std::vector<std::string>& candidates,
                                     RankOfName rank_of) {
    std::vector<RankedName> ranked;
    for (const std::string& candidate : candidates)
        if (const auto rank = rank_of(said, loose_words(candidate))) ranked.push_back({*rank, &candidate});
    sort_stably(ranked.begin(), ranked.end(), [](const RankedName& a, const RankedName& b) { return a.rank < b.rank; });
    return ranked;
}

constexpr std::size_t most_names_told = 6;

}  // namespace

std::string folded_name(std::string_view name) {
    std::string folded(name.size(), ' ');
    char* const begin = folded.data();
    char* end = begin;
    for (const char c : name) {
        if (!is_blank(c)) {
            *end++ = lower(c);
        } else if (end != begin && end[-1] != ' ') {
            *end++ = ' ';
        }
    }
    if (end != begin && end[-1] == ' ') --end;
    folded.resize(static_cast<std::size_t>(end - begin));
    return folded;
}

std::optional<std::string> nearest_name(std::string_view word, const std::vector<std::string>& candidates) {
    const auto wanted = folded_name(word);
    if (wanted.empty() || wanted.size() > longest_word) return std::nullopt;
    const std::string* nearest = nullptr;
    std::size_t least = 0;
    for (const auto& candidate : candidates) {
        const auto folded = folded_name(candidate);
        const auto distance = edit_distance(wanted, folded);
        if (!is_near(wanted, folded, distance) && !holds_all_words(folded, wanted)) continue;
        if (nearest && distance >= least) continue;
        nearest = &candidate;
        least = distance;
    }
    return nearest ? std::optional(*nearest) : std::nullopt;
}

std::string did_you_mean(std::string_view word, const std::vector<std::string>& candidates) {
    const auto nearest = nearest_name(word, candidates);
    return nearest ? "did you mean '" + *nearest + "'?" : std::string();
}

std::vector<std::string> names_near(std::string_view word, const std::vector<std::string>& candidates,
                                    std::size_t most) {
    if (word.size() > longest_word) return {};
    const std::vector<LooseWord> said = loose_words(word);
    if (said.empty()) return {};
    std::vector<RankedName> ranked = ranked_names(said, candidates, rank_by_words);
    if (ranked.empty()) {
        ranked = ranked_names(said, candidates, rank_by_letters);
        const auto farther = [&](const RankedName& one) { return one.rank > ranked.front().rank; };
        ranked.erase(std::find_if(ranked.begin(), ranked.end(), farther), ranked.end());
    }
    std::vector<std::string> names;
    for (const RankedName& one : ranked)
        if (names.size() < most) names.push_back(*one.name);
    return names;
}

std::string which_of(const std::vector<std::string>& names) {
    std::string hint = "which of these: ";
    for (std::size_t i = 0; i < names.size() && i < most_names_told; ++i)
        hint += (i == 0 ? "'" : ", '") + names[i] + "'";
    if (names.size() > most_names_told) hint += " and " + std::to_string(names.size() - most_names_told) + " more";
    return hint + "; type one of them";
}

std::string near_names_hint(std::string_view word, const std::vector<std::string>& candidates) {
    const std::vector<std::string> near = names_near(word, candidates, candidates.size());
    if (near.empty()) return {};
    return near.size() == 1 ? "did you mean '" + near.front() + "'?" : which_of(near);
}

}  // namespace baitwright
