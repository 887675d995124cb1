#pragma once

#include "answers/money/convert_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// Which prices become which, by the flags; the day is the caller's. Throws UsageError, naming the flag.
ConvertRequest convert_request(const Arguments& arguments);

}  // namespace baitwright
