#pragma once

#include "cli/command.h"

namespace baitwright {

/// The flags that say how much of a mix, how wet and in which state: those that `mix_request` reads, and what books it.
std::vector<Flag> mix_flags();

}  // namespace baitwright
