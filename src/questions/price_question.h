#pragma once

#include <string>
#include <vector>

#include "bait/ingredient.h"
#include "quantities/date.h"
#include "questions/arguments.h"

namespace baitwright {

/// What a pack of --pack costs by --is, seen on that day; its shop is for who knows the shops. `sizes` are those that
/// the ingredient comes in, as they are shown. Throws UsageError, naming the flag: --pack not told where there are
/// several sizes; more than one pack.
Pack priced_pack(const Arguments& arguments, const Ingredient& ingredient, Date on,
                 const std::vector<std::string>& sizes);

}  // namespace baitwright
