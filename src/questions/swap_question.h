#pragma once

#include "answers/blend/swap_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// What ran out, and how much else may change; what may stand in is for who knows the shed. Throws UsageError, naming
/// the flag.
SwapRequest swap_request(const Arguments& arguments);

}  // namespace baitwright
