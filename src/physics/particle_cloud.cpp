#include "physics/particle_cloud.h"

#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <numbers>
#include <numeric>

#include "physics/patch.h"
#include "physics/settling.h"
#include "quantities/fault.h"
#include "quantities/sort_stably.h"

namespace baitwright {

namespace {

constexpr double pi = std::numbers::pi;

double fourth(double r) {
    return r * r * r * r;
}

/// The momentum where the cloud has grown to r: P^2 = Ps^2 + (pi B/alpha)(r^4 - rs^4); none where it has stopped
/// before.
double momentum_at(double p, double b, double from, double to) {
    return std::sqrt(std::max(0.0, p * p + pi * b / cloud_widens * (fourth(to) - fourth(from))));
}

}  // namespace

ParticleCloud::ParticleCloud(const CloudStart& start, std::span<const CloudGrains> grains, const Tow& tow)
    : start_(start), tow_(tow), fates_(grains.size()) {
    const double r0 = start.radius.si();
    end_radius_ = r0 + cloud_widens * (tow.depth - start.depth).si();
    if (!(r0 > 0) || !(end_radius_ >= r0))
        throw InputError("out-of-range", "the cloud must begin above the bed and be wider than nothing",
                         "take a larger cup or ball, or deeper water");
    double weight = 0;
    for (const CloudGrains& g : grains) weight += g.weight.si();
    if (!(weight > 0 || start.speed.si() > 0))
        throw InputError("out-of-range", "a cloud that weighs nothing under water does not sink",
                         "wet it more, or put soil in");
    stretches_.push_back(
        {start.at.si(), r0, 2 * pi * r0 * r0 * r0 * start.speed.si(), standard_gravity * weight, start.drift.si()});
    std::vector<std::size_t> order(grains.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    sort_stably(order.begin(), order.end(),
                [&](std::size_t a, std::size_t b) { return grains[a].settling > grains[b].settling; });
    bool at_bed = false;
    for (const std::size_t i : order) {
        const double settling = grains[i].settling.si();
        if (!(settling > 0)) break;  // nor do any after it sink
        if (!at_bed) {
            const double leaves = leaving_radius(settling, 0.5 * grains[i].size.si());
            at_bed = !(leaves < end_radius_);
            advance(std::min(leaves, end_radius_));
            if (!at_bed) stretches_.back().b -= standard_gravity * grains[i].weight.si();
        }
        land(i, settling, at_bed);
    }
}

/// From where on the cloud only slows: r^4 = 3 (rs^4 - alpha Ps^2/(pi B)), if that is still ahead.
double ParticleCloud::slowing_radius() const {
    const Stretch& s = stretches_.back();
    if (!(s.b > 0)) return s.r;
    const double turn = 3 * (fourth(s.r) - cloud_widens * s.p * s.p / (pi * s.b));
    return turn > fourth(s.r) ? std::sqrt(std::sqrt(turn)) : s.r;
}

/// The last radius ahead at which the cloud sinks faster than that; nothing where it never will.
std::optional<double> ParticleCloud::last_faster_than(double settling) const {
    const Stretch& s = stretches_.back();
    const double slowing = slowing_radius();
    // With u = r^2: w <= ws where f(u) = 4 pi^2 ws^2 u^3 - (pi B/alpha) u^2 - c >= 0; past the slowing f rises and is
    // convex.
    const double cube = 4 * pi * pi * settling * settling, square = pi * s.b / cloud_widens,
                 c = s.p * s.p - square * fourth(s.r);
    const auto f = [&](double u) { return (cube * u - square) * u * u - c; };
    double u = slowing * slowing;
    if (f(u) >= 0) return std::nullopt;
    while (f(u) < 0) u *= 2;
    for (int step = 0; step < 60; ++step) {  // Newton's from above: each step falls short of the root
        const double next = u - f(u) / ((3 * cube * u - 2 * square) * u);
        if (!(next < u * (1 - 1e-15))) break;
        u = next;
    }
    return std::sqrt(u);
}

/// When it has grown so far, if nothing leaves before; for ever where it stops before.
double ParticleCloud::time_at(double r) const {
    const Stretch& s = stretches_.back();
    const double grown = fourth(r) - fourth(s.r);
    if (!(grown > 0)) return s.t;
    const double p = momentum_at(s.p, s.b, s.r, r);
    constexpr double ever = 1e7;
    return p > 0 ? s.t + pi / cloud_widens * grown / (p + s.p) : ever;
}

/// By how much later the cloud gets there than a grain that has sunk alone from where the cloud began.
double ParticleCloud::behind_alone(double r, double settling) const {
    return time_at(r) - start_.at.si() - (r - start_.radius.si()) / (cloud_widens * settling);
}

/// Between two radii, where it gets from ahead of the lone grain to behind it.
double ParticleCloud::falls_behind(double from, double to, double settling) const {
    std::uintmax_t steps = 40;
    const auto [low, high] =
        boost::math::tools::toms748_solve([&](double r) { return behind_alone(r, settling); }, from, to,
                                          boost::math::tools::eps_tolerance<double>(44), steps);
    return 0.5 * (low + high);
}

double ParticleCloud::leaving_radius(double settling, double grain_radius) const {
    const Stretch& s = stretches_.back();
    const double x = std::sqrt(std::max(0.0, s.b)) / (settling * grain_radius);
    const double falls_out = std::min(cloud_widens * 11 * grain_radius * std::pow(x, 0.83), end_radius_);
    if (!(falls_out > s.r)) return s.r;
    const double from = std::max(s.r, last_faster_than(settling).value_or(s.r));
    if (from >= falls_out) return falls_out;
    if (!(behind_alone(from, settling) < 0)) return from;
    if (!(behind_alone(falls_out, settling) > 0)) return falls_out;
    return falls_behind(from, falls_out, settling);
}

void ParticleCloud::advance(double r) {
    const Stretch s = stretches_.back();
    const double p = momentum_at(s.p, s.b, s.r, r);
    if (!(r > s.r) || !(p + s.p > 0)) return;
    const double took = pi / cloud_widens * (fourth(r) - fourth(s.r)) / (p + s.p);
    double carried = 0;
    if (!tow_.still()) {
        // The tow that it meets, by the square root of the time, along which the radius is smooth.
        const auto tow_at = [&](double root) {
            const double t = took * root * root;
            const double radius = std::sqrt(std::sqrt(fourth(s.r) + cloud_widens / pi * (2 * s.p + s.b * t) * t));
            return 2 * root * tow_.at(Length::from_si(depth_at(radius))).si();
        };
        // Near the bed a river's tow bends and stops: there the step is halved until it is followed.
        carried =
            took * (tow_.profile == TowProfile::river
                        ? boost::math::quadrature::gauss_kronrod<double, 15>::integrate(tow_at, 0.0, 1.0, 12, 1e-9)
                        : boost::math::quadrature::gauss<double, 20>::integrate(tow_at, 0.0, 1.0));
    }
    stretches_.push_back({s.t + took, r, p, s.b, s.drift + carried});
}

double ParticleCloud::depth_at(double r) const {
    return start_.depth.si() + (r - start_.radius.si()) / cloud_widens;
}

void ParticleCloud::land(std::size_t grain, double settling, bool at_bed) {
    const Stretch& s = stretches_.back();
    GrainsFate& fate = fates_[grain];
    const double depth = at_bed ? tow_.depth.si() : depth_at(s.r);
    const double alone = start_.at.si() + (tow_.depth - start_.depth).si() / settling;
    const double left = std::max(0.0, std::min(s.t + (tow_.depth.si() - depth + 0.5 * s.r) / settling, alone) - s.t);
    // So high above the bed it goes on alone, and drifts as the water there does.
    const Length height = Length::from_si(std::min(settling * left, tow_.depth.si()));
    fate.sinks = true;
    fate.leaves = Time::from_si(s.t);
    fate.depth = Length::from_si(depth);
    fate.radius = Length::from_si(s.r);
    fate.carried = Length::from_si(s.drift);
    fate.lands = Time::from_si(s.t + left);
    fate.spread = spread_patch(fate.radius, Time::from_si(left));
    fate.drift = fate.carried + Time::from_si(left) * tow_.mean_below(tow_.depth - height);
}

CloudPoint ParticleCloud::end() const {
    return at_depth(Length::from_si(depth_at(stretches_.back().r)));
}

CloudPoint ParticleCloud::at_depth(Length depth) const {
    const double r = start_.radius.si() + cloud_widens * (depth - start_.depth).si();
    const Stretch* in = &stretches_.front();
    for (const Stretch& s : stretches_)
        if (s.r <= r) in = &s;
    const double p = momentum_at(in->p, in->b, in->r, r);
    const double took = p + in->p > 0 ? pi / cloud_widens * (fourth(r) - fourth(in->r)) / (p + in->p) : 0;
    return {Time::from_si(in->t + took), depth, Length::from_si(r), Speed::from_si(p / (2 * pi * r * r * r))};
}

}  // namespace baitwright
