#pragma once

#include <span>
#include <vector>

#include "physics/tow.h"
#include "quantities/quantity.h"

/// A cloud of grains sinking as one through still water, widening, slowing, and losing its fastest grains first.
namespace baitwright {

/// How much wider a cloud becomes for each metre that it sinks: alpha.
inline constexpr double cloud_widens = 0.25;

/// Grains of one size of one ingredient.
struct CloudGrains {
    Volume
        weight;  ///< their submerged weight as a volume of water: m (1 - rho_w/rho_s)/rho_w; below zero for what rises
    Speed settling;  ///< of a single grain; what does not sink never leaves and never lands
};

/// Where and how the cloud begins: at the breaking of a cupful or a ball.
struct CloudStart {
    Time at;
    Length depth, radius;
    Speed speed;
    Length drift;
};

/// What becomes of one class of grains.
struct GrainsFate {
    bool sinks = false;
    Time leaves;    ///< the cloud, or reaches the bed inside it
    Length depth;   ///< of the cloud then
    Length radius;  ///< of the cloud then
    Time lands;
    Length spread;  ///< radius of the patch once landed
    Length drift;   ///< of that patch's middle, along the tow
};

/// The cloud's centre, over time.
struct CloudPoint {
    Time at;
    Length depth, radius;
    Speed speed;
};

/// A turbulent thermal of grains. Its radius grows with the way it has sunk, r = r0 + alpha (z - z0), alpha 0.25; its
/// momentum (with added mass 1/2) P = 2 pi r^3 w grows by the submerged weight still inside, dP/dt = g sum(weight) = B.
/// So, with t from the start of a stretch in which nothing leaves,
///     P = Ps + B t        r^4 = rs^4 + (alpha/pi)(2 Ps t + B t^2)        w = P/(2 pi r^3).
/// A class leaves, the fastest first, once the cloud is slowing and slower than the class settles; B drops by its
/// weight, the momentum is kept. It lands at its leaving + (y + r/2)/ws, y the cloud's height above the bed; what is
/// still inside when the centre reaches the bed has y = 0. From its leaving on the patch widens as R^2 = r^2 + 2 K t, K
/// 3e-4 m2/s.
/// **Source**: Morton, Taylor & Turner 1956 (entrainment); Rahimipour & Wilkinson 1992 and Bush, Thurber & Blanchette
/// 2003 for clouds of particles and their leaving (from memory); K is a default. **Valid for**: still or slowly
/// drifting water, a radius above zero. **Test**: `tests/physics/particle_cloud_test.cpp`, against SciPy's integrator.
class ParticleCloud {
public:
    /// Throws InputError "out-of-range" for a radius of zero, a start below the bed, or a cloud that weighs nothing.
    ParticleCloud(const CloudStart& start, std::span<const CloudGrains> grains, const Tow& tow);

    /// In the order in which the grains were given.
    [[nodiscard]] const std::vector<GrainsFate>& fates() const { return fates_; }
    /// When the centre reaches the bed; the last leaving where it has lost all its weight before.
    [[nodiscard]] CloudPoint end() const;
    /// The cloud when its centre is at that depth, between its start and its end.
    [[nodiscard]] CloudPoint at_depth(Length depth) const;

private:
    struct Stretch {  // in SI
        double t, r, p, b, drift;
    };
    void advance(double r);
    void land(std::size_t grain, double settling, bool at_bed);
    [[nodiscard]] double slowing_radius() const;
    [[nodiscard]] double leaving_radius(double settling) const;

    CloudStart start_;
    Tow tow_;
    std::vector<Stretch> stretches_;
    std::vector<GrainsFate> fates_;
    double end_radius_ = 0;
};

}  // namespace baitwright
