#pragma once

#include "quantities/quantity.h"

/// Moisture on the wet basis (of the whole) and the dry basis (per dry matter).
/// **Source**: ISO 6496, ISO 712, AACC 44-15 (definitions; from memory).
/// **Valid for**: wet-basis moisture from 0 to below 1; throws nothing, gives infinity at 1.
/// **Test**: `tests/physics/moisture_test.cpp`, rows MOISTURE_BASIS and MOISTURE_TEMPER.
namespace baitwright {

/// Md = Mw / (1 - Mw)
constexpr Ratio dry_basis(Ratio wet_basis) {
    return wet_basis / (1.0 - wet_basis);
}

/// Mw = Md / (1 + Md)
constexpr Ratio wet_basis(Ratio dry_basis) {
    return dry_basis / (1.0 + dry_basis);
}

/// The water that brings a mass from one wet-basis moisture to another: Q = W (M2 - M1) / (1 - M2).
constexpr Mass tempering_water(Mass mass, Ratio from, Ratio to) {
    return mass * ((to - from) / (1.0 - to));
}

/// An added-water ratio (g per g as bought) stated for moisture `stated`, for stuff that is at `actual`:
/// the same total water per dry matter. a' = (a + M0)(1 - M1)/(1 - M0) - M1.
constexpr Ratio added_water_at_moisture(Ratio added_per_gram, Ratio stated, Ratio actual) {
    return (added_per_gram + stated) * (1.0 - actual) / (1.0 - stated) - actual;
}

}  // namespace baitwright
