#pragma once

#include <vector>

#include "answers/pellets/soak_request.h"
#include "answers/plan/plan_answer.h"

namespace baitwright {

/// What goes into one tub: feeds of one make-up are made as one, wetted to the driest of their feels; what is to be
/// wetter is let down from it. `water` sets how long a mix drinks.
std::vector<PlannedBatch> plan_batches(const UnrolledStrategy& unrolled, Temperature water);

/// The pellets that go in soaked, each in one soak for all that takes it, and the expanders of the hook under the pump.
std::vector<PlannedSoak> plan_soaks(const Shelf& shelf, const UnrolledStrategy& unrolled,
                                    const std::vector<PlannedBatch>& batches, Temperature water, const PumpSetup& pump);

/// Whether all that is needed of it lies in kept mix, so that none is weighed.
bool is_all_kept(const IngredientNeed& need);

/// An ingredient's need with the room it takes.
PlannedTotal planned_total(const IngredientNeed& need);

}  // namespace baitwright
