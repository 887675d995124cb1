#pragma once

#include "bait/ingredient.h"
#include "questions/arguments.h"

namespace baitwright {

/// The ingredient as this person measured it, by the words and flags of `ingredient measure`: --absorption, --slump,
/// --moisture, --vessel with --holds, --how, --spread. What was derived is derived anew. Throws UsageError and
/// InputError.
Ingredient measured_bag(const Ingredient& old, const Arguments& arguments, Date today);

}  // namespace baitwright
