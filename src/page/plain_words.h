#pragma once

#include <optional>
#include <string>

#include "bait/venue.h"
#include "page/bank_data.h"

namespace baitwright {

/// The most that a page says of one strategy in plain words, in bytes; and of its mixes where it has no strategy.
inline constexpr std::size_t most_plain_words = 12000;

/// What a page says before any script runs, and where none does, as plain HTML (`plain_html.h`): of each strategy its
/// first mix as the plan has it, what to pour first; the cautions and the rules; the plan; its soaks. Without a
/// strategy each mix at 1 l. All of it are told pieces of the program's own `plan`, `mix` and `soak`, with what this
/// person always uses, the venue among it. Where it would be too long, whole sections at its end go, never a caution.
std::string plain_words(const BankContents& contents, const std::optional<Venue>& venue);

}  // namespace baitwright
