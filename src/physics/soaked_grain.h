#pragma once

#include <optional>

#include "physics/soaked_body.h"
#include "quantities/quantity.h"

namespace baitwright {

/// A pellet as it was cut: a cylinder.
struct GrainSize {
    Length diameter, length;
};

/// Whether it soaks as a sphere of its diameter, which has the ratio of volume to surface of a cylinder as long as it
/// is thick: so where length and diameter differ by at most a quarter.
bool soaks_as_sphere(GrainSize size);

/// A pellet after a soak, told by what has diffused, D t: what it holds, as shares of its capacity, on average, in the
/// core and at the surface, from the moment it is drained. Longer or flatter pellets go by the product of a long
/// cylinder and a sheet; their surface is the middle of the larger face (the side of a long pellet, the end of a flat
/// one).
/// **Source**: the product solution, Crank 1975, section 2.5 after Newman 1936 (from memory).
/// **Valid for**: D t of at least a millionth of the radius squared; throws InputError "out-of-range" below. **Test**:
/// `tests/physics/soaked_grain_test.cpp`.
class SoakedGrain {
public:
    SoakedGrain(GrainSize size, Area diffused);

    [[nodiscard]] Ratio mean() const { return mean_; }
    [[nodiscard]] Ratio core(Area drained) const;
    [[nodiscard]] Ratio surface(Area drained) const;
    /// How far core and surface are from the mean, the larger, as a share of the mean; never rises with time.
    [[nodiscard]] Ratio unevenness(Area drained) const;
    /// What must diffuse, drained, until the unevenness is at most this (above 0).
    [[nodiscard]] Area drained_until(Ratio unevenness) const;

private:
    struct Side {
        Area reach_squared;
        SoakedBody body;
    };
    GrainSize size_;
    Ratio mean_;
    Side round_;                ///< the sphere, or the cylinder
    std::optional<Side> ends_;  ///< the sheet
};

/// The share of capacity a pellet has taken up once D t has diffused under water; 0 for none.
Ratio grain_uptake(GrainSize size, Area diffused);

/// What must diffuse under water for that share of capacity (0 to below 1); throws InputError as
/// `fourier_number_of_uptake` does.
Area diffused_for_uptake(GrainSize size, Ratio share);

}  // namespace baitwright
