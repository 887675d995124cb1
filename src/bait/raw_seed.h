#pragma once

#include <string>

#include "bait/ingredient.h"
#include "bait/shelf.h"
#include "quantities/fault.h"

namespace baitwright {

/// Pulses, hard seeds and nuts as they are bought: they are soaked and cooked before anybody feeds them, in a mix or
/// out of it. What was cooked is a particle, and its meal a base: neither is raw seed.
bool is_raw_seed(const Ingredient& ingredient);

/// What is wrong with feeding it as it is bought, at that entry of a record. The hint says how to cook it and names the
/// cooked one, where the shelf has one.
Fault raw_seed_fault(const Ingredient& ingredient, const Shelf& shelf, std::string subject = {});

/// Whether such a fault is among those of an error.
bool is_of_raw_seed(const Error& error);

}  // namespace baitwright
