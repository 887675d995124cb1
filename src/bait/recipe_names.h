#pragma once

#include <string>
#include <vector>

#include "bait/recipe.h"
#include "bait/shelf.h"
#include "quantities/fault.h"

namespace baitwright {

/// The fault of a name that is not on the shelf, with "did you mean"; `subject` is the entry that holds it ("part 2").
Fault unknown_part(const std::string& of, const std::string& subject, const Shelf& shelf);
Fault unknown_additive(const std::string& of, const std::string& subject, const Shelf& shelf);
Fault unknown_feel(const std::string& feel, const Shelf& shelf, const std::string& subject = "feel");

/// Every name in a recipe that the shelf does not know: what can be said of a recipe whose amounts cannot be read.
std::vector<Fault> unknown_names(const Recipe& recipe, const Shelf& shelf);

}  // namespace baitwright
