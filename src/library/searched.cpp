#include "library/searched.h"

#include <set>

#include "library/named.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/suggestion.h"

namespace baitwright {

SearchedEntry searched(const BlendSpec& blend) {
    SearchedEntry entry{EntryKind::blend, blend.name, "blend", {kind_text(EntryKind::blend), {"note", blend.note}}};
    for (const BlendCandidate& candidate : blend.candidates) entry.texts.push_back({"candidate", candidate.of});
    return entry;
}

std::vector<SearchedEntry> all_searched(const LibraryPlace& place) {
    const std::unique_ptr<Shelf> shelf = open_library(place);
    std::vector<SearchedEntry> all;
    for (const std::string& name : shelf->ingredient_names()) all.push_back(searched(shelf->ingredient(name)));
    for (const std::string& name : shelf->recipe_names()) all.push_back(searched(shelf->recipe(name)));
    for (const std::string& name : shelf->strategy_names()) all.push_back(searched(shelf->strategy(name)));
    for (const Venue& venue : all_venues(place)) all.push_back(searched(venue));
    for (const BlendSpec& blend : all_blends(place)) all.push_back(searched(blend));
    return all;
}

std::vector<std::size_t> places_found(const std::vector<std::string>& words,
                                      const std::vector<SearchedEntry>& entries) {
    const FindAnswer answer = find_entries(words, entries);
    if (answer.found.empty())
        throw Error(FaultClass::answer_is_no,
                    Fault{"nothing-found", "nothing here holds " + in_quotes(joined(words, " ")),
                          answer.near.empty() ? "look through everything with: baitwright find WORD"
                                              : near_names_hint(joined(words, " "), answer.near)});
    std::set<std::string> names;
    for (const FoundEntry& found : answer.found) names.insert(found.name);
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < entries.size(); ++i)
        if (names.count(entries[i].name) > 0) places.push_back(i);
    return places;
}

}  // namespace baitwright
