#pragma once

#include "answers/mix/dry_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// How large the open tub is, how long it stands, in what air. Throws UsageError, naming the flag.
DryRequest dry_request(const Arguments& arguments);

}  // namespace baitwright
