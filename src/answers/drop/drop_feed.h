#pragma once

#include "answers/drop/drop_answer.h"
#include "answers/drop/drop_request.h"
#include "bait/recipe.h"
#include "bait/shelf.h"

namespace baitwright {

/// What happens to a portion of a mix in the water: where and when it breaks, when it lands and how wide, what hangs,
/// how far it drifts, ingredient by ingredient. The ranges are draws (Sobol) of how long it holds (a factor of 2.5
/// either way), how long a cupful holds (1.3), how fast grains settle (1.5), how wide they lie (1.6) and the drag of
/// the whole portion (1.5): estimates all. Throws UsageError (no depth, a tow of a flood, a ball that is none) and what
/// `resolve` throws.
DropAnswer drop_feed(const Shelf& shelf, const Recipe& recipe, const DropRequest& request);

/// A ball that cannot be made is a slip where it alone is asked for; side by side it stands with its warning. Throws
/// UsageError "unfit-state".
void refuse_no_ball(const DropRequest& request, const DropAnswer& answer);

/// Half of a pole's section, by which fishing starts past the feed's edge. **Source**: common practice, no source.
inline constexpr Length half_section = Length::from_si(0.75);

}  // namespace baitwright
