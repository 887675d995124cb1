#pragma once

#include <optional>

#include "bait/ingredient.h"

namespace baitwright {

/// The density of the bag's stuff without any pores, at 20 degC, with the moisture it has in the bag: carbohydrate is
/// what is left of the whole beside water, protein, fat and ash (as in food tables), and fibre is part of it.
/// Nothing where the composition does not tell: protein, fat or ash not stated, more than 40 % ash, or stated shares
/// that with the moisture come to more than 110 % (or, with carbohydrate among them, to less than 90 %).
/// **Source**: `pore_free_density`. **Valid for**: food and feed, dry or moist; within about 4 %.
/// **Test**: rows PARTICLE_DENSITY with the compositions of `sr24.csv`; `tests/library/shipped_densities_test.cpp`.
std::optional<Density> skeleton_from_composition(const Composition& made_of, Ratio moisture);

}  // namespace baitwright
