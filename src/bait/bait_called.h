#pragma once

#include <string>

#include "bait/recipe.h"
#include "bait/shelf.h"

namespace baitwright {

/// Whether a bait is wetted in a tub, or put into the water.
enum class BaitUse { wetted, dropped };

/// A mix of the shelf, or one ingredient, which is a mix of one. Throws NotFound; UsageError where the ingredient
/// cannot be one: a liquid; raw seed; to be wetted, what is soaked or goes in as it is.
Recipe bait_called(const std::string& word, const Shelf& shelf, BaitUse use);

}  // namespace baitwright
