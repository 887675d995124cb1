#pragma once

#include "answers/mix/tub_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// What is in the tub, since when, and how wet it is wanted. Throws UsageError, naming the flag.
TubRequest tub_request(const Arguments& arguments);

}  // namespace baitwright
