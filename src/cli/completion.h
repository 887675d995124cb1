#pragma once

#include <string>
#include <vector>

#include "cli/candidates.h"

namespace baitwright {

/// What may stand in place of the last of these words, which is being typed and may be empty; the words are those
/// behind the program's name, without the quotes that they were typed in. Capitals do not matter. Nothing is made,
/// written or run for it. Throws nothing for what was typed.
Completion completion_of(const std::vector<std::string>& words);

}  // namespace baitwright
