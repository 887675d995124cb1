#pragma once

#include "answers/shared/mix_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// How much of a mix, how wet, in which state, for how many. Where the shed limits it (--from-stock) the target is an
/// empty `OnHand`. Throws UsageError, naming the flag.
MixRequest mix_request(const Arguments& arguments);

}  // namespace baitwright
