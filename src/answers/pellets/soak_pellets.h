#pragma once

#include "answers/pellets/soak_answer.h"
#include "answers/pellets/soak_request.h"
#include "bait/shelf.h"

namespace baitwright {

/// Soaks and pumps: how much water, how long under it and drained, how core and surface are at each stage, what it
/// weighs, how sure that is, and when to start what. Times go with the square of the diameter over the diffusivity, so
/// that their range is a log-normal's with sigma^2 = 4 sigma_d^2 + sigma_D^2 + (Ea/R |1/T - 1/288.15 K| sigma_Ea)^2;
/// what a soak by the clock comes to is drawn (Sobol) from that and the capacity's spread.
/// **Test**: `tests/answers/soak_pellets_test.cpp`. Throws UsageError (an amount, a temperature, an uptake out of
/// range; an ingredient that is neither pellet nor expander) and NotFound.
SoakAnswer soak_pellets(const Shelf& shelf, const SoakRequest& request);

/// The soak of one pellet alone, without curve, portions or additives: for a mix that holds a soaked batch.
SoakedAnswer soak_one(const Ingredient& pellet, Mass dry, Temperature water);

/// Core and surface within this share of the mean: ready to use; even right through.
inline constexpr double ready_unevenness = 0.5;
inline constexpr double even_unevenness = 0.2;

}  // namespace baitwright
