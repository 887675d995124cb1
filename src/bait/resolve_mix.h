#pragma once

#include "bait/resolved_mix.h"
#include "bait/shelf.h"

namespace baitwright {

/// Opens a recipe up. Throws InputError with all its faults: an unknown ingredient or feel, a cycle of recipes, parts
/// by share beside parts by measure, packs of an ingredient with none or several sizes, no solid at all, soaking what
/// is not a pellet, raw seed (`raw_seed.h`), a dose by pellets in a mix without any.
ResolvedMix resolve(const Recipe& recipe, const Shelf& shelf);

}  // namespace baitwright
