#pragma once

#include <optional>

#include "bait/ingredient.h"

namespace baitwright {

/// What one dose is measured against: the masses, the volume and the water of the bait it goes into.
struct DoseGround {
    Mass dry, wet, water;
    Volume pellets;
};

/// The mass that a rate comes to on that ground.
Mass dosed_mass(const DoseRate& rate, const Ingredient& additive, const DoseGround& ground);

/// Planned over the label's most on that ground; nothing where there is no label or its basis is not there.
std::optional<Ratio> share_of_label(const Ingredient& additive, Mass planned, const DoseGround& ground);

}  // namespace baitwright
