#pragma once

#include <optional>
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
    Length size;     ///< across, of the sphere of its volume
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
    Time leaves;     ///< the cloud, or reaches the bed inside it
    Length depth;    ///< of the cloud then
    Length radius;   ///< of the cloud then
    Length carried;  ///< of the cloud then, along the tow
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
/// A class leaves, the fastest first, where Bush, Thurber & Blanchette saw it fall out, Zf/a = 11 (sqrt(B)/(ws
/// a))^0.83, a the grain's radius, here r = alpha Zf; or before, where the cloud, slower than the grain by then, has
/// fallen behind a grain that sinks alone. Where few grains make no cloud that is at once. B drops by its weight, the
/// momentum is kept. It lands at its leaving + (y + r/2)/ws, y the cloud's height above the bed, and never later than
/// it would alone from the start; what is still inside when the centre reaches the bed has y = 0. From its leaving on
/// the patch widens (`spread_patch`), and it drifts with the tow of the heights that it falls through, y + r/2 and
/// down.
/// **Source**: Morton, Taylor & Turner 1956 (entrainment); Bush, Thurber & Blanchette 2003, J. Fluid Mech. 489, 29 (11
/// +- 2; abstract read). **Valid for**: still or slowly drifting water, a radius above zero. **Test**:
/// `tests/physics/particle_cloud_test.cpp`, against SciPy's integrator.
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
    [[nodiscard]] double depth_at(double r) const;
    [[nodiscard]] double slowing_radius() const;
    [[nodiscard]] std::optional<double> last_faster_than(double settling) const;
    [[nodiscard]] double time_at(double r) const;
    [[nodiscard]] double behind_alone(double r, double settling) const;
    [[nodiscard]] double falls_behind(double from, double to, double settling) const;
    [[nodiscard]] double leaving_radius(double settling, double grain_radius) const;

    CloudStart start_;
    Tow tow_;
    std::vector<Stretch> stretches_;
    std::vector<GrainsFate> fates_;
    double end_radius_ = 0;
};

}  // namespace baitwright
