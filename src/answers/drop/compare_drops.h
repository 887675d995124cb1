#pragma once

#include <string>
#include <vector>

#include "answers/drop/drop_answer.h"
#include "answers/drop/drop_request.h"
#include "bait/recipe.h"
#include "bait/shelf.h"

namespace baitwright {

/// The same feed side by side: in every feel of the shelf; in the usual sizes of its form (balls of 30 to 75 mm, else
/// cups of 25 to 500 ml); or in the usual forms, or those
/// that were told. Throws what `drop_feed` throws.
std::vector<DropAnswer> compare_drops(const Shelf& shelf, const Recipe& recipe, DropRequest request, DropComparison by);

/// Every feel in every usual cup and ball: the five that come nearest to the wish, by the ratio of what is to what is
/// wanted. What comes with a warning is no way to get there. Throws what `drop_feed` throws.
std::vector<DropAnswer> drops_wished(const Shelf& shelf, const Recipe& recipe, DropRequest request,
                                     const DropWish& wish);

}  // namespace baitwright
