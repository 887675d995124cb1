#pragma once

#include <optional>

#include "physics/soaked_body.h"
#include "quantities/quantity.h"

namespace baitwright {

/// A pellet as it was cut: a cylinder, whatever its length.
struct GrainSize {
    Length diameter, length;
};

/// A pellet after a soak, told by what has diffused, D t: what it holds, as shares of its capacity, on average, in the
/// core and outside, from the moment it is drained.
///
/// What is missing in a short cylinder is the product of what is missing in a long one, C(r), and in a sheet as thick
/// as it is long, Z(z). That holds while it stands drained too: the soaked profile is such a product, and with no water
/// through any face C and Z each even out by themselves. So with C, Z in the core, at the surface and on average (which
/// standing does not change)
///     missing on average  C_mean Z_mean
///     missing in the core  C_core Z_core
///     missing outside, the mean over all its faces  (2 L C_surface Z_mean + d C_mean Z_surface) / (2 L + d)
/// with d the diameter and L the length. Outside it only dries while it stands, and the core only gets wetter.
/// **Source**: the product solution, Crank 1975, section 2.5 after Newman 1936 (from memory).
/// **Valid for**: D t of at least a millionth of the radius squared; throws InputError "out-of-range" below. **Test**:
/// `tests/reference/soaked_grain.csv` (SciPy's integrator on the finite cylinder itself, which knows of no product).
class SoakedGrain {
public:
    SoakedGrain(GrainSize size, Area diffused);

    [[nodiscard]] Ratio mean() const { return mean_; }
    [[nodiscard]] Ratio core(Area drained) const { return taken_up(drained).core; }
    [[nodiscard]] Ratio surface(Area drained) const { return taken_up(drained).surface; }
    /// How far core and outside are from the mean, the larger, as a share of the mean; never rises with time.
    [[nodiscard]] Ratio unevenness(Area drained) const;
    /// What must diffuse, drained, until the unevenness is at most this (above 0).
    [[nodiscard]] Area drained_until(Ratio unevenness) const;

private:
    struct Side {
        Area reach_squared;
        SoakedBody body;
    };
    struct TakenUp {
        double core, surface;
    };
    [[nodiscard]] TakenUp taken_up(Area drained) const;

    GrainSize size_;
    Ratio mean_;
    Side round_;                ///< the long cylinder
    std::optional<Side> ends_;  ///< the sheet; none where the ends are too far off to matter
};

/// The share of capacity a pellet has taken up once D t has diffused under water; 0 for none.
Ratio grain_uptake(GrainSize size, Area diffused);

/// What must diffuse under water for that share of capacity (0 to below 1); throws InputError as
/// `fourier_number_of_uptake` does.
Area diffused_for_uptake(GrainSize size, Ratio share);

}  // namespace baitwright
