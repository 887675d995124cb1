#include "quantities/suggestion.h"

#include <algorithm>

#include "quantities/edit_distance.h"

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

}  // namespace

std::string folded_name(std::string_view name) {
    std::string folded;
    for (char c : name) {
        if (!is_blank(c)) {
            folded += lower(c);
        } else if (!folded.empty() && folded.back() != ' ') {
            folded += ' ';
        }
    }
    if (!folded.empty() && folded.back() == ' ') folded.pop_back();
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

}  // namespace baitwright
