#pragma once

#include "answers/mix_request.h"
#include "cli/command.h"

namespace baitwright {

/// The flags that say how much of a mix, how wet and in which state, and the request they make.
std::vector<Flag> mix_flags();
MixRequest mix_request(const Arguments& arguments);

}  // namespace baitwright
