#pragma once

#include "answers/blend/linear_programme.h"
#include "answers/blend/swap_answer.h"
#include "answers/blend/swap_request.h"
#include "bait/shelf.h"

namespace baitwright {

/// The closest match of a mix without what ran out, from all that the shelf holds of the same sort: meals and powders
/// stand in for each other, everything else for its own kind; not what the mix holds already. Throws NotFound (an
/// ingredient that is not in the mix), UsageError (a liquid), Error "nothing-to-swap-in" and what `resolve` throws.
SwapAnswer swap_ingredient(const Shelf& shelf, const Recipe& recipe, const SwapRequest& request, LinearSolver& solver);

}  // namespace baitwright
