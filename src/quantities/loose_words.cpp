#include "quantities/loose_words.h"

#include <algorithm>

namespace baitwright {

namespace {

bool is_figure(char c) {
    return c >= '0' && c <= '9';
}

/// A letter of ASCII, or a byte of any other letter.
bool is_word_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (static_cast<unsigned char>(c) & 0x80U) != 0;
}

char small(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Both numbers of a word come to the same: "box" and "boxes", "cookie" and "cookies", "berry" and "berries".
std::string stem_of(std::string word) {
    if (word.size() >= 4 && word.back() == 's' && word[word.size() - 2] != 's') word.pop_back();
    if (word.size() >= 4 && word.back() == 'e') word.pop_back();
    if (word.size() >= 3 && word.back() == 'y') word.back() = 'i';
    return word;
}

/// A point between figures belongs to the number.
bool goes_on_as_number(std::string_view text, std::size_t at) {
    return is_figure(text[at]) || (text[at] == '.' && at + 1 < text.size() && is_figure(text[at + 1]));
}

LooseWord number_at(std::string_view text, std::size_t at) {
    std::size_t end = at + 1;
    while (end < text.size() && goes_on_as_number(text, end)) ++end;
    const std::string number(text.substr(at, end - at));
    return {number, number, at, end - at, true};
}

LooseWord word_at(std::string_view text, std::size_t at) {
    std::size_t end = at;
    std::string word;
    for (; end < text.size() && (is_word_letter(text[end]) || text[end] == '\''); ++end)
        if (text[end] != '\'') word += small(text[end]);
    return {word, stem_of(word), at, end - at, false};
}

}  // namespace

std::vector<LooseWord> loose_words(std::string_view text) {
    std::vector<LooseWord> words;
    for (std::size_t at = 0; at < text.size();) {
        if (!is_figure(text[at]) && !is_word_letter(text[at])) {
            ++at;
            continue;
        }
        words.push_back(is_figure(text[at]) ? number_at(text, at) : word_at(text, at));
        at += words.back().size;
    }
    return words;
}

bool same_word(const LooseWord& a, const LooseWord& b) {
    return a.stem == b.stem;
}

bool begins_word(const LooseWord& said, const LooseWord& word, std::size_t fewest_letters) {
    return !said.is_number && said.whole.size() >= fewest_letters && word.whole.rfind(said.whole, 0) == 0;
}

bool same_words(const std::vector<LooseWord>& a, const std::vector<LooseWord>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), same_word);
}

}  // namespace baitwright
