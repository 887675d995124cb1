#include "bait/uptake.h"

#include <algorithm>
#include <boost/math/tools/roots.hpp>

#include "physics/diffusion_in_sphere.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double fourier_at_t90 = 0.183;  // F(0.183) = 0.9
constexpr MolarEnergy uptake_activation = 35.0 * kilojoule_per_mole;

}  // namespace

MixUptake::MixUptake(const ResolvedMix& mix, Temperature water) {
    const double faster = arrhenius_factor(uptake_activation, water);
    double sum = 0;
    for (const SolidPart& part : mix.solids) {
        if (!takes_water(part.ingredient.kind) || part.prepare == Preparation::soaked) continue;
        const double weight = part.share * part.ingredient.absorption.value;
        if (weight <= 0) continue;
        drinkers_.push_back({weight, part.ingredient.uptake_time.value / faster});
        sum += weight;
    }
    for (Drinker& drinker : drinkers_) drinker.weight /= sum;
}

Ratio MixUptake::share_taken(Time since_wetting) const {
    if (drinkers_.empty()) return 1.0;
    double taken = 0;
    for (const Drinker& drinker : drinkers_)
        taken += drinker.weight *
                 (drinker.t90 > Time{} ? double(sphere_uptake(fourier_at_t90 * (since_wetting / drinker.t90))) : 1.0);
    return taken;
}

Time MixUptake::time_to(Ratio share) const {
    Time slowest;
    for (const Drinker& drinker : drinkers_) slowest = std::max(slowest, drinker.t90);
    if (!(slowest > Time{}) || share_taken(Time{}) >= share) return {};
    const auto missing = [&](double t) { return share_taken(t * slowest) - share; };
    double late = 1;
    while (missing(late) < 0 && late < 1e6) late *= 2;
    std::uintmax_t steps = 60;
    const auto [low, high] =
        boost::math::tools::toms748_solve(missing, 0.0, late, boost::math::tools::eps_tolerance<double>(30), steps);
    return 0.5 * (low + high) * slowest;
}

Ratio taken_after(const Ingredient& in, Time since_wetting, Temperature water) {
    if (!takes_water(in.kind) || !(in.uptake_time.value > Time{})) return 1.0;
    const Time t90 = in.uptake_time.value / arrhenius_factor(uptake_activation, water);
    return sphere_uptake(fourier_at_t90 * (since_wetting / t90));
}

std::optional<Time> pores_fill(const Ingredient& in, Ratio share, Temperature water) {
    if (!takes_water(in.kind)) return std::nullopt;
    return fourier_number_of_uptake(share) / fourier_at_t90 *
           (in.uptake_time.value / arrhenius_factor(uptake_activation, water));
}

WaterMarks marks_after(const WaterMarks& settled, Ratio share_taken) {
    const Ratio absorption = settled.absorption * share_taken;
    return {absorption, absorption + (settled.slump - settled.absorption)};
}

}  // namespace baitwright
