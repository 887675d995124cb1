#pragma once

#include "answers/warning.h"
#include "bait/ingredient.h"

namespace baitwright {

/// The warning for a dose above the most that the additive's label allows; `of_label` is how many times that.
Warning over_label(const Ingredient& additive, Ratio of_label);

}  // namespace baitwright
