#pragma once

#include <optional>
#include <set>
#include <string>

#include "bait/shelf.h"
#include "bait/strategy.h"

namespace baitwright {

/// What a strategy feeds, by name: its mixes, and every ingredient in them, loose or on the hook. What the shelf does
/// not know is passed over.
std::set<std::string> names_in(const Strategy& strategy, const Shelf& shelf);

/// The one of them that a word means: the same name; or the only one that begins with it and a comma ("fishmeal" for
/// "fishmeal, brown"). Nothing where there is none; throws UsageError "several-fit" where there are several.
std::optional<std::string> named_among(const std::string& word, const std::set<std::string>& names);

/// The same, throwing UsageError "not-in-strategy" with "did you mean". `whose` begins the message: "'margin' feeds".
std::string named_in(const std::string& word, const std::set<std::string>& names, const std::string& whose);

}  // namespace baitwright
