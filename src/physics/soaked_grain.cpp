#include "physics/soaked_grain.h"

#include <algorithm>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <numbers>

#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr double shortest = 1e-6;  // Fourier number from which a body can be drained

Area squared(Length length) {
    return length * length;
}

/// The root of a function that rises from below zero at the low end to above it at the high one.
template <class Function>
double root_between(Function&& function, double low, double high) {
    std::uintmax_t steps = 100;
    constexpr int bits = 34;  // 6e-11 of the root
    const auto [a, b] =
        boost::math::tools::toms748_solve(function, low, high, boost::math::tools::eps_tolerance<double>(bits), steps);
    return 0.5 * (a + b);
}

}  // namespace

Ratio grain_uptake(GrainSize size, Area diffused) {
    if (!(diffused > Area{})) return 0.0;
    return 1 - missing_after_soak(BodyShape::cylinder, diffused / squared(0.5 * size.diameter)) *
                   missing_after_soak(BodyShape::sheet, diffused / squared(0.5 * size.length));
}

Area diffused_for_uptake(GrainSize size, Ratio share) {
    if (share <= 0) return {};
    if (!(share < 1))
        throw InputError("out-of-range", "full saturation is reached only after endless time",
                         "ask for less than 100 %");
    // The uptake goes nearly with the square root of time, by the surface over the volume at first: s is that root.
    const auto excess = [&](double s) { return grain_uptake(size, Area::from_si(s * s)) - share; };
    const double surface_to_volume = (4.0 / size.diameter + 2.0 / size.length).si();
    double early = 0.999 * 0.5 * std::sqrt(std::numbers::pi) * share / surface_to_volume, late = 1.2 * early;
    while (excess(late) < 0) {
        early = late;
        late *= 1.2;
    }
    const double root = root_between(excess, early, late);
    return Area::from_si(root * root);
}

SoakedGrain::SoakedGrain(GrainSize size, Area diffused)
    : size_(size),
      mean_(grain_uptake(size, diffused)),
      round_{squared(0.5 * size.diameter), SoakedBody(BodyShape::cylinder, diffused / squared(0.5 * size.diameter))} {
    const Area reach_squared = squared(0.5 * size.length);
    if (diffused / reach_squared >= shortest)
        ends_ = Side{reach_squared, SoakedBody(BodyShape::sheet, diffused / reach_squared)};
}

SoakedGrain::TakenUp SoakedGrain::taken_up(Area drained) const {
    const SoakedBody::Missing side = round_.body.missing(drained / round_.reach_squared);
    if (!ends_) return {1 - side.core, 1 - side.surface};
    const SoakedBody::Missing end = ends_->body.missing(drained / ends_->reach_squared);
    const double ends_share = size_.diameter / (2.0 * size_.length + size_.diameter);
    return {1 - side.core * end.core, 1 - (1 - ends_share) * side.surface * ends_->body.missing_mean() -
                                          ends_share * round_.body.missing_mean() * end.surface};
}

Ratio SoakedGrain::unevenness(Area drained) const {
    const TakenUp now = taken_up(drained);
    return std::max(std::abs(now.surface - mean()), std::abs(mean() - now.core)) / mean();
}

Area SoakedGrain::drained_until(Ratio wanted) const {
    if (unevenness(Area{}) <= wanted) return {};
    const auto excess = [&](double tau) { return wanted - unevenness(tau * round_.reach_squared); };
    double late = 0.1;
    while (excess(late) < 0) late *= 1.5;
    double early = late / 1.5;
    while (early > 1e-9 && excess(early) > 0) {
        late = early;
        early /= 1.5;
    }
    return root_between(excess, early > 1e-9 ? early : 0.0, late) * round_.reach_squared;
}

}  // namespace baitwright
