#pragma once

#include "answers/blend/blend_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// How much is made. Throws UsageError, naming the flag.
BlendRequest blend_request(const Arguments& arguments);

/// How many bags it is shared out into; 0 where they are not asked for. Throws as above.
int bags_asked(const Arguments& arguments);

}  // namespace baitwright
