#pragma once

#include <optional>

#include "answers/drop/drop_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// How the feed goes in, where, and what the person saw of it. Throws UsageError, naming the flag; a flag
/// that tells nothing of the form that goes in is a slip.
DropRequest drop_request(const Arguments& arguments);

/// What is compared, or wished for, where it is: one of the two at most. Throws UsageError, naming the flag.
std::optional<DropComparison> drop_comparison(const Arguments& arguments);
std::optional<DropWish> drop_wish(const Arguments& arguments);

/// "light", "firm" or "hard". Throws InputError.
Squeeze read_squeeze(const std::string& text);

/// What the person saw of it. Throws UsageError, naming the flag.
void read_own_look(const Arguments& arguments, OwnLook& own);

}  // namespace baitwright
