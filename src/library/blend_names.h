#pragma once

#include <vector>

#include "bait/blend_spec.h"
#include "bait/shelf.h"
#include "quantities/fault.h"

namespace baitwright {

/// Every candidate that the shelf does not know, with its subject, "candidate 2".
std::vector<Fault> unknown_candidates(const BlendSpec& spec, const Shelf& shelf);

}  // namespace baitwright
