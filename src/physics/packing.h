#pragma once

#include <span>

#include "quantities/quantity.h"

namespace baitwright {

/// One size class of a packing: its share of the solid volume, the packing it has alone, its particle size.
struct PackedClass {
    Ratio volume_share;
    Ratio own_packing;  ///< solid volume per total volume when poured alone, 0 to 1
    Length size;
};

/// How well the poured classes pack together: solid volume per total volume.
/// With y volume shares, beta_i = phi_i (1 + 1/K), finer j loosening by a = sqrt(1 - (1 - d_j/d_i)^1.02), coarser j
/// by the wall effect b = 1 - (1 - d_i/d_j)^1.5:
///   gamma_i = beta_i / (1 - sum_finer y_j (1 - a beta_i/beta_j)
///                         - sum_coarser y_j (1 - beta_i + b beta_i (1 - 1/beta_j)))
///   K = sum_i (y_i/beta_i) / (1/phi - 1/gamma_i), solved for phi.
/// One class alone gives back its own packing.
/// **Source**: de Larrard, Concrete Mixture Proportioning, 1999, compressible packing model; K = 4.1 for poured
/// grains (from memory). **Valid for**: grains above about 0.05 mm; cohesive powders pack looser.
/// Of more than 128 classes those of nearly one size are taken together: within 3e-3 of what each by each would give,
/// most within 1e-4.
/// Shares need not sum to 1; classes without a share are passed over. Throws InputError where no class has a share.
/// **Test**: one class; McGeary 1961, binary spheres, shaken, with K = 9, and as bounds for K = 4.1 (from memory).
Ratio packing_density(std::span<const PackedClass> classes, double compaction_index = 4.1);

/// Share of a volume that is not solid: 1 - loose / particle density.
/// **Test**: rows POROSITY.
constexpr Ratio porosity(Density bulk, Density particle) {
    return 1.0 - bulk / particle;
}

/// Share of the pores that liquid fills: S = w (rho_s / rho_l) (1 - e) / e, w liquid per solid mass, e porosity.
/// **Source**: identity; Iveson et al. 2001 (from memory). **Test**: rows SATURATION.
constexpr Ratio pore_saturation(Ratio liquid_per_solid, Density solid, Density liquid, Ratio porosity) {
    return liquid_per_solid * (solid / liquid) * (1.0 - porosity) / porosity;
}

}  // namespace baitwright
