#include "answers/drop/drop_fates.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "physics/patch.h"
#include "physics/piecewise_linear.h"
#include "physics/slaking_lump.h"

namespace baitwright {

namespace {

constexpr double whole_patch = 1.5;       // radius of what falls apart on the bottom, in diameters
constexpr Length handful = 0.15 * metre;  // radius over which a hand strews a loose handful. Default, from memory
constexpr double wake_from_above = 64, wake_below = 12;  // e-folds of the fines' shedding, in first widths
constexpr std::array<double, 2> lump_sizes{0.46, 0.38};  // of the portion's width; equal masses. Ours
constexpr int releases = 3, releases_of_ball = 8;        // points along a lump's wearing, and a ball's
constexpr double rough_drag = 0.6;

/// A place and time in the water from where something sinks alone.
struct Release {
    Time at;
    Length depth, radius, drift;
};

/// The portion in one look, with what is asked of it again and again.
class Follower {
public:
    Follower(const DropSetup& setup, const Break& at, const DropFactors& factors)
        : s_(setup), at_(at), f_(factors), across_(diameter_of(setup.body.volume)) {}

    DropFates whole();
    DropFates worn();
    DropFates broken();

private:
    [[nodiscard]] GrainsFate alone(const Release& from, Speed settling) const;
    [[nodiscard]] GrainsFate afloat(const GrainClass& grains, Release from) const;
    void settle(std::size_t grain, double share, bool in_lump, const GrainsFate& fate);
    void release_all(const Release& from, double share, bool in_lump);
    void lie(const Release& there, double share);
    [[nodiscard]] Release landed() const {
        return {at_.point.at, s_.tow.depth, whole_patch * across_, at_.point.drift};
    }
    void slake(const SlakingLump& lump, const Release& from, double share);
    void shed_fines(const ParticleCloud& cloud, double share);
    void add_fines(const FinesShare& fines, double share, double lands);
    [[nodiscard]] double bound() const;
    [[nodiscard]] double sails_aside() const;
    [[nodiscard]] SlakingLump lump_of(Length size) const;
    [[nodiscard]] ParticleCloud cloud_of(double bound) const;
    [[nodiscard]] Length first_radius() const;
    [[nodiscard]] bool floats(const GrainClass& g) const { return !(g.settling > Speed{}); }

    const DropSetup& s_;
    const Break& at_;
    const DropFactors& f_;
    Length across_;
    DropFates fates_;
};

void Follower::settle(std::size_t grain, double share, bool in_lump, const GrainsFate& fate) {
    fates_.settled.push_back({grain, share * s_.feed.grains[grain].share, in_lump, fate});
    GrainsFate& put = fates_.settled.back().fate;
    // What meets the bed as a cloud runs out over it at least as far as what falls apart on it.
    put.spread = f_.spread * std::max(put.spread, whole_patch * across_);
}

GrainsFate Follower::alone(const Release& from, Speed settling) const {
    const Time fall = (s_.tow.depth - from.depth) / settling;
    GrainsFate fate;
    fate.sinks = true;
    fate.leaves = from.at;
    fate.depth = from.depth;
    fate.radius = from.radius;
    fate.lands = from.at + fall;
    fate.spread = spread_patch(from.radius, fall);
    fate.drift = from.drift + fall * s_.tow.mean_below(from.depth);
    return fate;
}

/// It rises as long as it is lighter than water, no higher than the surface, and sinks once its pores have drunk
/// enough.
GrainsFate Follower::afloat(const GrainClass& grains, Release from) const {
    if (!grains.afloat) return {};
    const Speed rises = -f_.settling * grains.settling;
    const Time floats = std::max(Time{}, grains.afloat->until - from.at);
    const Time climbs = rises * floats > from.depth ? from.depth / rises : floats;
    const Length up = std::max(Length{}, from.depth - climbs * rises);
    from.drift += climbs * s_.tow.mean_between(up, from.depth) + (floats - climbs) * s_.tow.at(up);
    from.radius = spread_patch(from.radius, floats);
    from.depth = up;
    from.at += floats;
    return alone(from, f_.settling * grains.afloat->then);
}

void Follower::add_fines(const FinesShare& fines, double share, double lands) {
    fates_.fines.push_back(
        {share * fines.share, fines.settling > Speed{} ? lands : std::numeric_limits<double>::infinity()});
}

/// A share of everything, let go there.
void Follower::release_all(const Release& from, double share, bool in_lump) {
    for (std::size_t i = 0; i < s_.feed.grains.size(); ++i) {
        const GrainClass& g = s_.feed.grains[i];
        settle(i, share, in_lump, floats(g) ? afloat(g, from) : alone(from, f_.settling * g.settling));
    }
    for (const FinesShare& fines : s_.feed.fines)
        add_fines(fines, share, from.at.si() + (s_.tow.depth - from.depth).si() / (f_.settling * fines.settling.si()));
}

/// A share of everything, on the bed.
void Follower::lie(const Release& there, double share) {
    const Length over_bed = std::min(0.5 * across_, s_.tow.depth);
    const Speed tow = s_.tow.mean_below(s_.tow.depth - over_bed);
    for (std::size_t i = 0; i < s_.feed.grains.size(); ++i) {
        const GrainClass& g = s_.feed.grains[i];
        GrainsFate fate;
        fate.sinks = true;
        fate.leaves = fate.lands = there.at;
        fate.depth = s_.tow.depth;
        fate.radius = fate.spread = there.radius;
        fate.drift = there.drift;
        if (!floats(g)) fate.drift += over_bed / (f_.settling * g.settling) * tow;
        settle(i, share, true, floats(g) ? afloat(g, there) : fate);
    }
    for (const FinesShare& fines : s_.feed.fines) add_fines(fines, share, there.at.si());
}

/// What a lump loses on its way, in equal parts; what of it reaches the bed lies there.
void Follower::slake(const SlakingLump& lump, const Release& from, double share) {
    const Length below = s_.tow.depth - from.depth;
    const std::optional<Time> reaches = lump.sinks(below);
    const double lost = reaches ? 1 - lump.left(*reaches) : 1;
    const auto along = [&](Time time) {
        const Length way = std::min(below, lump.way(time)), depth = from.depth + way;
        return Release{from.at + time, depth, spread_patch(from.radius, time) + sails_aside() * way,
                       from.drift + time * s_.tow.mean_between(from.depth, depth)};
    };
    for (int k = 0; k < releases && lost > 1e-6; ++k)
        release_all(along(lump.gone(lost * (k + 0.5) / releases)), share * lost / releases, true);
    if (lost < 1) lie(along(*reaches), share * (1 - lost));
}

DropFates Follower::whole() {
    lie(landed(), 1);
    fates_.lands_as_one = 1;
    return std::move(fates_);
}

/// What a ball loses on its way, in equal parts; what of it reaches the bed lies there.
DropFates Follower::worn() {
    const SlakingLump ball{{}, at_.holds - at_.waits};
    const double left = at_.whole ? ball.left(at_.point.at - at_.waits) : 0, lost = 1 - left;
    std::array<Time, releases_of_ball> times;
    for (std::size_t k = 0; k < times.size(); ++k)
        times[k] = at_.waits + ball.gone(lost * (static_cast<double>(k) + 0.5) / releases_of_ball);
    for (const FallPoint& point : falls_of(s_, f_, times))
        release_all({point.at, std::min(point.depth, s_.tow.depth), 0.5 * across_, point.drift},
                    lost / releases_of_ball, true);
    if (left > 0) lie(landed(), left);
    fates_.lands_as_one = left;
    return std::move(fates_);
}

double Follower::bound() const {
    if (at_.raft || std::holds_alternative<DroppedLoose>(s_.request->form) || !(at_.holds > Time{})) return 0;
    return bound_share(s_.wetness, s_.binder);
}

/// How far a lump gets aside for each metre that it sinks: the wetter it is, the flatter it gets and the further it
/// sails.
double Follower::sails_aside() const {
    constexpr std::array<Knot, 2> by_wetness{{{1.2, 0.05}, {1.7, 0.14}}};
    return piecewise_linear(by_wetness, s_.wetness);
}

SlakingLump Follower::lump_of(Length size) const {
    const double excess = s_.body.under_water / (s_.body.volume * s_.water.density);
    return {std::sqrt(4.0 / 3 * standard_gravity * size.si() * excess / (f_.drag * rough_drag)) * metre_per_second,
            at_.fit * holds(Hold::squeezed, s_.wetness, size, s_.binder, Squeeze::firm)};
}

Length Follower::first_radius() const {
    const Length radius = 0.5 * across_;
    return at_.raft || std::holds_alternative<DroppedLoose>(s_.request->form) ? std::max(radius, handful) : radius;
}

ParticleCloud Follower::cloud_of(double bound) const {
    std::vector<CloudGrains> grains;
    grains.reserve(s_.feed.grains.size() + lump_sizes.size() + 1);
    const auto weighs = [&](double share, double weight) { return share * weight * s_.dry / s_.water.density; };
    for (const GrainClass& g : s_.feed.grains)
        grains.push_back({weighs((1 - bound) * g.share, g.weight), f_.settling * g.settling, g.size});
    for (const double size : lump_sizes)
        grains.push_back({weighs(bound / static_cast<double>(lump_sizes.size()), s_.feed.weight),
                          lump_of(size * across_).speed, size * across_});
    double fines = 0;
    for (const FinesShare& g : s_.feed.fines) fines += (1 - bound) * g.share * g.weight;
    grains.push_back({weighs(1, fines), {}, {}});
    return ParticleCloud({at_.point.at, at_.point.depth, first_radius(), at_.point.speed, at_.point.drift}, grains,
                         s_.tow);
}

void Follower::shed_fines(const ParticleCloud& cloud, double share) {
    constexpr int pieces = 8;
    const double height = (s_.tow.depth - at_.point.depth).si();
    const double wake = 2 * first_radius().si() * (at_.point.depth > 0.25 * across_ ? wake_below : wake_from_above);
    const double shed = 1 - std::exp(-height / wake);
    std::array<CloudPoint, pieces> points;
    for (int i = 0; i < pieces; ++i) {
        const double way = -wake * std::log(1 - shed * (i + 0.5) / pieces);
        points[static_cast<std::size_t>(i)] = cloud.at_depth(at_.point.depth + way * metre);
    }
    const CloudPoint end = cloud.at_depth(s_.tow.depth);
    for (const FinesShare& fines : s_.feed.fines) {
        const double speed = f_.settling * fines.settling.si();
        for (const CloudPoint& point : points)
            add_fines(fines, share * shed / pieces, point.at.si() + (s_.tow.depth - point.depth).si() / speed);
        add_fines(fines, share * (1 - shed), end.at.si() + 0.5 * end.radius.si() / speed);
    }
}

DropFates Follower::broken() {
    if (at_.raft) {
        release_all({{}, {}, first_radius(), {}}, 1, false);
        return std::move(fates_);
    }
    const double bound = this->bound();
    const ParticleCloud cloud = cloud_of(bound);
    const std::size_t grains = s_.feed.grains.size();
    const Release burst{at_.point.at, at_.point.depth, first_radius(), at_.point.drift};
    for (std::size_t i = 0; i < grains; ++i)
        settle(i, 1 - bound, false, floats(s_.feed.grains[i]) ? afloat(s_.feed.grains[i], burst) : cloud.fates()[i]);
    for (std::size_t k = 0; k < lump_sizes.size() && bound > 0; ++k) {
        const GrainsFate& fate = cloud.fates()[grains + k];
        slake(lump_of(lump_sizes[k] * across_), {fate.leaves, fate.depth, fate.radius, fate.carried},
              bound / static_cast<double>(lump_sizes.size()));
    }
    if (!s_.feed.fines.empty()) shed_fines(cloud, 1 - bound);
    return std::move(fates_);
}

}  // namespace

DropFates fates_of(const DropSetup& setup, const Break& at, const DropFactors& factors) {
    Follower follower(setup, at, factors);
    return at.wears ? follower.worn() : at.whole ? follower.whole() : follower.broken();
}

}  // namespace baitwright
