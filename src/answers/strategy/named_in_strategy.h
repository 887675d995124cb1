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

/// The one of them that has that name in full, or nothing.
std::optional<std::string> exactly_among(const std::string& name, const std::set<std::string>& names);

/// The one of them that a person means who says that (`quantities/said_name.h`). Throws UsageError "several-fit", or
/// "not-in-strategy" with what is near. `whose` begins the message: "'margin' feeds".
std::string named_in(const std::string& word, const std::set<std::string>& names, const std::string& whose);

}  // namespace baitwright
