#pragma once

#include "answers/shared/warning.h"
#include "bait/ingredient.h"

namespace baitwright {

/// The warning for a dose above the most that the additive's label allows, with how much that is here; `of_label` is
/// how many times that the mass is. What is allowed is rounded down.
Warning over_label(const Ingredient& additive, Mass mass, Ratio of_label);

}  // namespace baitwright
