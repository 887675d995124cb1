#pragma once

#include <vector>

#include "bait/blend_spec.h"
#include "bait/shelf.h"
#include "quantities/fault.h"

namespace baitwright {

/// What is wrong with the candidates, each with its subject, "candidate 2": those that the shelf does not know, and raw
/// seed.
std::vector<Fault> unfit_candidates(const BlendSpec& spec, const Shelf& shelf);

}  // namespace baitwright
