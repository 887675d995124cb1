#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/entry_kind.h"

/// Entries of a library looked up by words that stand somewhere in them.
namespace baitwright {

/// A text of an entry that is searched. A trait is a word or two (kind, colour, feel), a note runs on.
struct SearchedText {
    enum class Sort { name, trait, note };
    std::string_view key;  ///< "name", "colour", "why"
    std::string text;
    Sort sort = Sort::note;
};

/// An entry as it is searched.
struct SearchedEntry {
    EntryKind kind = EntryKind::ingredient;
    std::string name;
    std::string is;                   ///< in a word or two: "pellet, brown", "mix, firm"
    std::vector<SearchedText> texts;  ///< without the name; empty ones hold nothing
};

/// An entry that holds all the words, and where the last of them was found that is not in a better place.
struct FoundEntry {
    EntryKind kind = EntryKind::ingredient;
    std::string name, is;
    SearchedText where;
    std::size_t at = 0, size = 0;  ///< the word in that text, in bytes
};

struct FindAnswer {
    std::vector<std::string> words;  ///< as they were said
    std::vector<FoundEntry> found;   ///< best first
    std::vector<std::string> near;   ///< where none is found: names that are near
};

/// Those that hold all the words (`quantities/loose_words.h`), or words that begin with them. Best first: all words in
/// the name before some in a trait before some in a note, in each whole words before beginnings; else in the order
/// given. Throws UsageError "no-word" where no letter or figure was said.
FindAnswer find_entries(const std::vector<std::string>& said, const std::vector<SearchedEntry>& entries);

}  // namespace baitwright
