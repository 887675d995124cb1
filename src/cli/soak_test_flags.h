#pragma once

#include <vector>

#include "bait/ingredient.h"
#include "cli/command.h"
#include "library/edited_ingredient.h"

namespace baitwright {

/// The flags of the soak test, for `ingredient measure`.
std::vector<Flag> soak_test_flags();

/// What the soak test says of the pellet: its capacity and its diffusivity at 15 degC, where they were measured.
std::vector<KeyValue> read_soak_test(const Arguments& arguments, const Ingredient& pellet, Date today);

}  // namespace baitwright
