#include "physics/soaked_grain.h"

#include <algorithm>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <numbers>

#include "physics/diffusion_in_sphere.h"

namespace baitwright {

namespace {

constexpr double sphere_like = 0.25;
constexpr double shortest = 1e-6;  // Fourier number from which the series are used

Area squared(Length length) {
    return length * length;
}

/// The root of a function that is below zero at the low end and above it at the high one.
template <class Function>
double root_between(Function&& function, double low, double high) {
    std::uintmax_t steps = 100;
    constexpr int bits = 34;  // 6e-11 of the root
    const auto [a, b] =
        boost::math::tools::toms748_solve(function, low, high, boost::math::tools::eps_tolerance<double>(bits), steps);
    return 0.5 * (a + b);
}

/// What is missing on average; through a skin too thin for the series it goes by the surface alone.
double missing_mean(BodyShape shape, double fourier) {
    if (fourier >= shortest) return SoakedBody(shape, fourier).missing_mean();
    const double surface_to_volume = shape == BodyShape::sheet ? 1 : 2;  // in units of the reach
    return 1 - surface_to_volume * 2 * std::sqrt(fourier / std::numbers::pi);
}

}  // namespace

bool soaks_as_sphere(GrainSize size) {
    return std::abs(size.length / size.diameter - 1) <= sphere_like + 1e-9;
}

Ratio grain_uptake(GrainSize size, Area diffused) {
    if (!(diffused > Area{})) return 0.0;
    if (soaks_as_sphere(size)) return sphere_uptake(diffused / squared(0.5 * size.diameter));
    return 1 - missing_mean(BodyShape::cylinder, diffused / squared(0.5 * size.diameter)) *
                   missing_mean(BodyShape::sheet, diffused / squared(0.5 * size.length));
}

Area diffused_for_uptake(GrainSize size, Ratio share) {
    const Area reach = squared(0.5 * size.diameter);
    if (soaks_as_sphere(size) || !(share > 0 && share < 1)) return fourier_number_of_uptake(share) * reach;
    const Area scale = squared(0.5 * std::min(size.diameter, size.length));
    double late = 0.1;
    while (grain_uptake(size, late * scale) < share) late *= 2;
    return root_between([&](double fourier) { return grain_uptake(size, fourier * scale) - share; }, 0.0, late) * scale;
}

SoakedGrain::SoakedGrain(GrainSize size, Area diffused)
    : size_(size),
      mean_(grain_uptake(size, diffused)),
      round_{squared(0.5 * size.diameter), SoakedBody(soaks_as_sphere(size) ? BodyShape::sphere : BodyShape::cylinder,
                                                      diffused / squared(0.5 * size.diameter))} {
    const Area reach_squared = squared(0.5 * size.length);
    if (!soaks_as_sphere(size) && diffused / reach_squared >= shortest)  // else the ends are too far off to matter
        ends_ = Side{reach_squared, SoakedBody(BodyShape::sheet, diffused / reach_squared)};
}

Ratio SoakedGrain::core(Area drained) const {
    const double round = round_.body.missing_core(drained / round_.reach_squared);
    return 1 - round * (ends_ ? double(ends_->body.missing_core(drained / ends_->reach_squared)) : 1.0);
}

Ratio SoakedGrain::surface(Area drained) const {
    const Ratio round = drained / round_.reach_squared;
    if (!ends_) return 1 - round_.body.missing_surface(round);
    const Ratio ends = drained / ends_->reach_squared;
    if (size_.length < size_.diameter) return 1 - round_.body.missing_core(round) * ends_->body.missing_surface(ends);
    return 1 - round_.body.missing_surface(round) * ends_->body.missing_core(ends);
}

Ratio SoakedGrain::unevenness(Area drained) const {
    if (!ends_) {
        const SoakedBody::Ends missing = round_.body.missing_ends(drained / round_.reach_squared);
        const double missing_mean = 1 - mean_;
        return std::max(std::abs(missing_mean - missing.surface), std::abs(missing.core - missing_mean)) / mean_;
    }
    return std::max(std::abs(surface(drained) - mean()), std::abs(mean() - core(drained))) / mean();
}

Area SoakedGrain::drained_until(Ratio wanted) const {
    if (unevenness(Area{}) <= wanted) return {};
    const auto excess = [&](double tau) { return wanted - unevenness(tau * round_.reach_squared); };
    // Nearly always the slowest way of evening out is what is waited for; else the root is sought from both sides.
    const double guess = std::max(0.01, double(round_.body.drained_by_slowest(wanted * mean_)));
    double early = 0.98 * guess, late = 1.02 * guess;
    while (early > 1e-9 && excess(early) > 0) early *= 0.5;
    while (excess(late) < 0) late *= 2;
    return root_between(excess, early > 1e-9 ? early : 0.0, late) * round_.reach_squared;
}

}  // namespace baitwright
