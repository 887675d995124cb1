#include "answers/shared/find_entries.h"

#include "quantities/fault.h"
#include "quantities/listed.h"
#include "quantities/loose_words.h"
#include "quantities/sort_stably.h"
#include "quantities/suggestion.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

constexpr std::size_t most_near = 6;

/// Where a word stands best: in the name before a trait before a note, whole before only begun.
struct WordPlace {
    std::size_t rank = 0;
    const SearchedText* text = nullptr;
    std::size_t at = 0, size = 0;
};

struct ReadText {
    SearchedText text;
    std::vector<LooseWord> words;
};

std::vector<ReadText> read_texts(const SearchedEntry& entry) {
    std::vector<ReadText> read{{{"name", entry.name, SearchedText::Sort::name}, loose_words(entry.name)}};
    for (const SearchedText& text : entry.texts) read.push_back({text, loose_words(text.text)});
    return read;
}

std::optional<WordPlace> best_place(const LooseWord& said, const std::vector<ReadText>& texts) {
    std::optional<WordPlace> best;
    for (const ReadText& text : texts)
        for (const LooseWord& word : text.words) {
            const bool whole = same_word(said, word);
            if (!whole && !begins_word(said, word)) continue;
            const std::size_t rank = 2 * static_cast<std::size_t>(text.text.sort) + (whole ? 0 : 1);
            if (!best || rank < best->rank) best = WordPlace{rank, &text.text, word.at, word.size};
        }
    return best;
}

struct RankedEntry {
    std::size_t worst = 0, sum = 0;  ///< over the words
    FoundEntry entry;
};

std::optional<RankedEntry> ranked(const std::vector<LooseWord>& said, const SearchedEntry& entry) {
    const std::vector<ReadText> texts = read_texts(entry);
    RankedEntry ranked{0, 0, {entry.kind, entry.name, entry.is, texts.front().text, 0, 0}};
    for (const LooseWord& word : said) {
        const auto place = best_place(word, texts);
        if (!place) return std::nullopt;
        ranked.sum += place->rank;
        if (ranked.entry.size > 0 && place->rank <= ranked.worst) continue;
        ranked.worst = place->rank;
        ranked.entry.where = *place->text;
        ranked.entry.at = place->at;
        ranked.entry.size = place->size;
    }
    return ranked;
}

std::vector<LooseWord> words_said(const std::vector<std::string>& said) {
    std::vector<LooseWord> words = loose_words(joined(said, " "));
    if (words.empty())
        throw UsageError("no-word", "there is no word to look for",
                         worded("for example: baitwright find micro pellet", "for example micro pellet"));
    return words;
}

}  // namespace

FindAnswer find_entries(const std::vector<std::string>& said, const std::vector<SearchedEntry>& entries) {
    const std::vector<LooseWord> words = words_said(said);
    std::vector<RankedEntry> all;
    for (const SearchedEntry& entry : entries)
        if (auto one_found = ranked(words, entry)) all.push_back(*std::move(one_found));
    sort_stably(all.begin(), all.end(), [](const RankedEntry& a, const RankedEntry& b) {
        return a.worst != b.worst ? a.worst < b.worst : a.sum < b.sum;
    });
    FindAnswer answer{said, {}, {}};
    for (RankedEntry& entry : all) answer.found.push_back(std::move(entry.entry));
    if (!answer.found.empty()) return answer;
    std::vector<std::string> names;
    names.reserve(entries.size());
    for (const SearchedEntry& entry : entries) names.push_back(entry.name);
    answer.near = names_near(joined(said, " "), names, most_near);
    return answer;
}

}  // namespace baitwright
