#pragma once

#include "answers/shared/find_entries.h"
#include "report/reply.h"

namespace baitwright {

/// What was found, the best 20 told; the answer is no where nothing was.
Reply find_reply(FindAnswer answer);

}  // namespace baitwright
