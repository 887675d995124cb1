#pragma once

#include "answers/pellets/soak_answer.h"
#include "answers/pellets/soak_request.h"
#include "bait/ingredient.h"

namespace baitwright {

/// Up to this density a pellet sinks slowly. **Source**: common practice, no source.
inline constexpr Density slow_sinking = Density::from_si(1020);

/// Expanders under water in a vessel, air drawn off by the stroke and let back: the open pores fill by `pore_fill`, and
/// the pellet weighs envelope + fill x porosity x water per volume. Strokes that are not given: the fewest that sink 95
/// of 100 bags, else the fewest that sink the usual one. How sure: Sobol points over the spreads of envelope density
/// and porosity. Throws UsageError: the vessel is too small for pellets and water, strokes or volumes out of range.
PumpedAnswer pump_expanders(const Ingredient& expander, Mass dry, const SoakRequest& request);

/// What the pellets hold after the strokes: used for their weight and volume.
Ratio water_in_pores(const Ingredient& expander, Ratio fill, Temperature water);

}  // namespace baitwright
