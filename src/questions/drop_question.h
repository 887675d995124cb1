#pragma once

#include "answers/drop_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// How the feed goes in, where, and what the person saw of it. Throws UsageError, naming the flag.
DropRequest drop_request(const Arguments& arguments);

}  // namespace baitwright
