#pragma once

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "answers/plan/searched_venue.h"
#include "answers/shared/searched_entry.h"
#include "bait/blend_spec.h"
#include "bait/venue.h"
#include "library/open_library.h"

/// What is searched of each kind of entry, and all that there is of them.
namespace baitwright {

SearchedEntry searched(const BlendSpec& blend);

/// All that a library holds: ingredients, mixes, strategies, venues and blends, each in the order of their names.
std::vector<SearchedEntry> all_searched(const LibraryPlace& place);

/// Which of the entries of one kind hold all the words, rising. Throws Error "nothing-found" of the class answer_is_no,
/// with names that are near.
std::vector<std::size_t> places_found(const std::vector<std::string>& words, const std::vector<SearchedEntry>& entries);

/// Those of the entries that hold all the words, in the order given; all of them where no word is said. Throws as
/// `places_found`.
template <class Entry>
std::vector<Entry> those_with(const std::vector<std::string>& words, std::vector<Entry> entries) {
    if (words.empty()) return entries;
    std::vector<SearchedEntry> all;
    all.reserve(entries.size());
    for (const Entry& entry : entries) all.push_back(searched(entry));
    std::vector<Entry> held;
    for (const std::size_t place : places_found(words, all)) held.push_back(std::move(entries[place]));
    return held;
}

}  // namespace baitwright
