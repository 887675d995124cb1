#pragma once

#include <string>
#include <vector>

#include "bait/resolved_mix.h"

namespace baitwright {

/// True where the name is one of these, whatever its case.
bool is_named(const std::vector<std::string>& names, const std::string& name);

/// Takes ingredients out; what is left keeps its proportions and takes their room. False where nothing dry is left.
bool take_out(ResolvedMix& mix, const std::vector<std::string>& without);

}  // namespace baitwright
