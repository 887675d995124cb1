#include "files/entry_names.h"

#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"

namespace baitwright {

std::optional<std::string> EntryNames::claim(TableReader& entry) {
    auto name = entry.name("name");
    if (!name) return std::nullopt;
    const Position place = entry.place_of_value("name");
    const auto [first, is_new] = lines_.emplace(folded_name(*name), place.line);
    if (is_new) return name;
    entry.faults().add(place, "duplicate-name", in_quotes(*name) + " is in this file twice",
                       "the first stands in line " + std::to_string(first->second) + "; rename or remove one");
    return std::nullopt;
}

}  // namespace baitwright
