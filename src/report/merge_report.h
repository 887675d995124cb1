#pragma once

#include "answers/shared/merge_answer.h"
#include "report/reply.h"

namespace baitwright {

Reply merge_reply(MergeAnswer answer);

}  // namespace baitwright
