#pragma once

#include "answers/pellets/soak_answer.h"
#include "answers/pellets/soak_request.h"
#include "bait/shelf.h"

namespace baitwright {

/// An additive of a soak, looked up once.
struct Steeped {
    Ingredient ingredient;
    std::variant<DoseRate, Mass, Volume> dose;
};

/// What is stirred into a batch's water, which share of it is this batch's, and the water.
struct Stirring {
    const std::vector<Steeped>& additives;
    Ratio share;
    SoakMethod method;
    Temperature water;
};

/// What a pumped and a soaked batch share: name, amounts, grains, keeping. `batch` tells the water in it.
BatchAnswer batch_answer(const Ingredient& pellet, const SoakedBatch& batch, const PortionsWanted& portions);

/// Puts what is stirred into the water on the batch: its amount, its strength in the water and in the pellets, its
/// label, and what it makes of their water activity. An amount for all batches together is split by dry mass (`share`).
/// The pellets take the solution as it is, water and additive alike; what is not taken is poured away. Where the water
/// is measured the solution is all they take, so that `batch.pour` becomes less by what is stirred in; throws
/// UsageError "too-much-additive" where no water is left. Water activities multiply. **Source**: Ross 1975 (from
/// memory). Solutes of the pellet itself are left out, so that it is an upper bound. Dose over the label: a warning
/// that makes the answer no.
void steep(const Stirring& stirring, const Ingredient& pellet, BatchAnswer& batch, std::vector<Warning>& warnings);

}  // namespace baitwright
