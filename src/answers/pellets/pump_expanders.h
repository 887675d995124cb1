#pragma once

#include "answers/pellets/soak_answer.h"
#include "answers/pellets/soak_request.h"
#include "bait/ingredient.h"

namespace baitwright {

/// Up to this density a pellet sinks slowly. **Source**: common practice, no source.
inline constexpr Density slow_sinking = Density::from_si(1020);

/// Expanders under water in a vessel, air drawn off by the stroke and let back: the open pores fill by `pore_fill`, and
/// the pellet weighs envelope + fill x porosity x water per volume. They float, so a sieve or the plunger holds them
/// under: the water reaches the top of their poured bulk, or of one layer over the whole base, and 1 cm above, even
/// once the pores are full; the vessel is as tall as it is wide, and filled to three quarters at most (all common
/// practice, no source). What does not fit goes in equal lots, the fewest that do. The table of strokes ends where the
/// pores are 99 % full. Strokes that are not given: the fewest that sink 95 of 100 bags, else the fewest that sink the
/// usual one. How sure: Sobol points over the spreads of envelope density and porosity. Throws UsageError: not even one
/// layer fits the vessel, strokes or volumes out of range.
PumpedAnswer pump_expanders(const Ingredient& expander, Mass dry, const SoakRequest& request);

/// What the pellets hold after the strokes: used for their weight and volume.
Ratio water_in_pores(const Ingredient& expander, Ratio fill, Temperature water);

}  // namespace baitwright
