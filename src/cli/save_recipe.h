#pragma once

#include <string>

#include "bait/recipe.h"
#include "cli/command.h"

namespace baitwright {

/// The flag that keeps a mix that was worked out.
Flag save_flag();

/// Refuses --save with --library, before anything is worked out.
void check_save(const Arguments& arguments, const Surroundings& around);

/// Puts the recipe into the store under the name that --save gives; says so. Nothing without the flag.
std::string save_recipe(const Arguments& arguments, const Surroundings& around, Recipe recipe);

}  // namespace baitwright
