#include "answers/drop/drop_sketch.h"

#include <algorithm>
#include <boost/math/tools/roots.hpp>
#include <cmath>

namespace baitwright {

namespace {

constexpr double wet_enough_for_a_ball = 0.85;
constexpr double bursts_when_thrown = 1.07;  // the upper edge of crumbly
constexpr double whole_patch = 1.5;          // radius of what falls apart on the bottom, in diameters
constexpr Length handful = 0.15 * metre;     // radius over which a hand strews a loose handful. Default, from memory
constexpr Length wake = 2.0 * metre;         // e-fold of the depth over which fines are shed
constexpr Time ever = 3600.0 * second;

/// Where and when it breaks; `whole` where it reaches the bed first.
struct Break {
    FallPoint point;
    bool whole = false;
    Time lasts;
};

Time hold_time(const DropSetup& s, const DropFactors& f) {
    if (s.request->own.holds) return *s.request->own.holds;
    return f.hold * ball_holds(s.wetness, diameter_of(s.body.volume), s.binder, s.request->squeeze);
}

std::optional<FallPoint> fall_of(const DropSetup& s, const DropFactors& f, Length depth, Time time) {
    FallingBody body = s.body;
    body.drag = f.drag * body.drag;
    return fall_from_rest(body, s.water, s.tow, depth, time);
}

std::optional<Break> break_of_ball(const DropSetup& s, const DropFactors& f) {
    if (s.wetness < wet_enough_for_a_ball || (s.request->thrown && s.wetness < bursts_when_thrown)) return Break{};
    const Time holds = hold_time(s, f);
    const auto point = fall_of(s, f, s.tow.depth, holds);
    if (!point) return std::nullopt;
    const bool whole = point->depth >= s.tow.depth * (1 - 1e-9);
    return Break{*point, whole, whole ? holds - point->at : Time{}};
}

std::optional<Break> break_of_cup(const DropSetup& s, const DropFactors& f) {
    const Length own_way = f.breaking * (cup_breaks_after(s.wetness) * diameter_of(s.body.volume));
    const Length depth = std::min(s.request->own.breaks_at.value_or(own_way), s.tow.depth);
    const Time at_most = s.request->own.breaks_at ? ever : s.request->own.holds.value_or(ever);
    const auto point = fall_of(s, f, depth, at_most);
    if (!point) return std::nullopt;
    return Break{*point, point->depth >= s.tow.depth * (1 - 1e-9), Time{}};
}

/// Nothing where it floats.
std::optional<Break> break_of(const DropSetup& s, const DropFactors& f) {
    if (!(s.body.under_water > Mass{})) return std::nullopt;
    if (std::holds_alternative<DroppedLoose>(s.request->form)) return Break{};
    if (std::holds_alternative<DroppedFeeder>(s.request->form))
        return Break{{Time{}, s.tow.depth, {}, {}}, true, hold_time(s, f)};
    return std::holds_alternative<DroppedBall>(s.request->form) ? break_of_ball(s, f) : break_of_cup(s, f);
}

std::vector<GrainsFate> fates_of_whole(const DropSetup& s, const Break& at, double spread) {
    GrainsFate fate;
    fate.sinks = true;
    fate.leaves = fate.lands = at.point.at;
    fate.depth = s.tow.depth;
    fate.spread = fate.radius = spread * whole_patch * diameter_of(s.body.volume);
    fate.drift = at.point.drift;
    std::vector<GrainsFate> fates(s.feed.grains.size(), fate);
    return fates;
}

ParticleCloud cloud_of(const DropSetup& s, const Break& at, const DropFactors& f) {
    std::vector<CloudGrains> grains;
    for (const GrainClass& g : s.feed.grains)
        grains.push_back({s.dry * (g.share * g.weight) / s.water.density, f.settling * g.settling});
    for (const FinesShare& g : s.feed.fines)
        grains.push_back({s.dry * (g.share * g.weight) / s.water.density, f.settling * g.settling});
    Length radius = 0.5 * diameter_of(s.body.volume);
    if (std::holds_alternative<DroppedLoose>(s.request->form)) radius = std::max(radius, handful);
    return ParticleCloud({at.point.at, at.point.depth, radius, at.point.speed, at.point.drift}, grains, s.tow);
}

/// Shares of all of it that have not landed after those times: grains by their landing, fines by where they were shed.
class Hanging {
public:
    void add(double share, double lands) { lands_.emplace_back(lands, share); }
    void add_for_ever(double share) { for_ever_ += share; }
    [[nodiscard]] double after(Time time) const {
        double landed = 0, all = for_ever_;
        for (const auto& [lands, share] : lands_) {
            all += share;
            if (lands <= time.si()) landed += share;
        }
        return all > 0 ? 1 - landed / all : 0;
    }

private:
    std::vector<std::pair<double, double>> lands_;
    double for_ever_ = 0;
};

void add_fines(const DropSetup& s, const DropFactors& f, const Break& at, const ParticleCloud* cloud,
               Hanging& hanging) {
    constexpr int pieces = 12;
    for (const FinesShare& fines : s.feed.fines) {
        const double speed = f.settling * fines.settling.si(), height = (s.tow.depth - at.point.depth).si();
        if (!(speed > 0)) {
            hanging.add_for_ever(fines.share);
            continue;
        }
        if (!cloud) {
            hanging.add(fines.share, at.point.at.si());
            continue;
        }
        const double shed = 1 - std::exp(-height / wake.si());
        for (int i = 0; i < pieces; ++i) {
            const double way = -wake.si() * std::log(1 - shed * (i + 0.5) / pieces);
            const Length depth = at.point.depth + Length::from_si(way);
            hanging.add(fines.share * shed / pieces, cloud->at_depth(depth).at.si() + (height - way) / speed);
        }
        const CloudPoint end = cloud->at_depth(s.tow.depth);
        hanging.add(fines.share * (1 - shed), end.at.si() + 0.5 * end.radius.si() / speed);
    }
}

template <class Value>
std::vector<std::pair<double, double>> sinking(const DropSetup& s, const std::vector<GrainsFate>& fates, Value value) {
    std::vector<std::pair<double, double>> values;
    for (std::size_t i = 0; i < fates.size(); ++i)
        if (fates[i].sinks) values.emplace_back(value(fates[i]).si(), s.feed.grains[i].share);
    return values;
}

template <class Q>
Points<Q> points_of(const std::vector<std::pair<double, double>>& values) {
    return {Q::from_si(point_of(values, 0.1)), Q::from_si(point_of(values, 0.5)), Q::from_si(point_of(values, 0.9))};
}

void summarise(const DropSetup& s, DropOutcome& outcome) {
    DropSketch& sketch = outcome.sketch;
    const auto lands = sinking(s, outcome.fates, [](const GrainsFate& f) { return f.lands; });
    if (lands.empty()) return;
    const auto drifts = sinking(s, outcome.fates, [](const GrainsFate& f) { return f.drift; });
    sketch.landed = points_of<Time>(lands);
    sketch.drift = points_of<Length>(drifts);
    std::vector<double> shares;
    for (const GrainClass& g : s.feed.grains) shares.push_back(g.share);
    sketch.width = {width_of(outcome.fates, shares, 0.5), width_of(outcome.fates, shares, 0.9)};
    const auto along = [&](double q) {
        return Length::from_si(point_of(drifts, 0.5 + q / 2) - point_of(drifts, 0.5 - q / 2));
    };
    sketch.length = {sketch.width.half + along(0.5), sketch.width.most + along(0.9)};
}

}  // namespace

double point_of(std::vector<std::pair<double, double>> values, double q) {
    std::sort(values.begin(), values.end());
    double all = 0;
    for (const auto& [value, share] : values) all += share;
    double before = 0, last_middle = 0, last_value = values.front().first;
    for (const auto& [value, share] : values) {
        const double middle = (before + 0.5 * share) / all;
        if (q <= middle)
            return middle > last_middle ? last_value + (value - last_value) * (q - last_middle) / (middle - last_middle)
                                        : value;
        before += share;
        last_middle = middle;
        last_value = value;
    }
    return last_value;
}

Length width_of(const std::vector<GrainsFate>& fates, const std::vector<double>& shares, double q) {
    double all = 0, widest = 0;
    for (std::size_t i = 0; i < fates.size(); ++i)
        if (fates[i].sinks) {
            all += shares[i];
            widest = std::max(widest, fates[i].spread.si());
        }
    if (!(all > 0)) return {};
    const auto missing = [&](double r) {
        double inside = 0;
        for (std::size_t i = 0; i < fates.size(); ++i)
            if (fates[i].sinks)
                inside += shares[i] * std::min(1.0, r * r / (fates[i].spread.si() * fates[i].spread.si()));
        return inside / all - q;
    };
    std::uintmax_t steps = 60;
    const auto [low, high] =
        boost::math::tools::toms748_solve(missing, 0.0, widest, boost::math::tools::eps_tolerance<double>(36), steps);
    return Length::from_si(low + high);
}

std::vector<FallMark> fall_to(const DropSetup& s, Length depth) {
    constexpr int pieces = 8;
    std::vector<FallMark> marks{{}};
    if (!(depth > Length{})) return marks;
    const bool straight = std::holds_alternative<DroppedFeeder>(s.request->form);
    for (int i = 1; i <= pieces; ++i) {
        const Length down = depth * (static_cast<double>(i) / pieces);
        const auto point = straight ? std::nullopt : fall_of(s, {}, down, ever);
        marks.push_back({down, point ? point->drift : Length{}});
    }
    return marks;
}

DropOutcome follow(const DropSetup& s, const DropFactors& f) {
    DropOutcome outcome;
    const std::optional<Break> at = break_of(s, f);
    if (!at) {
        outcome.floats = true;
        return outcome;
    }
    DropSketch& sketch = outcome.sketch;
    sketch.breaks = at->whole ? Breaks::bottom : at->point.depth > Length{} ? Breaks::midwater : Breaks::surface;
    sketch.breaks_depth = std::min(at->point.depth, s.tow.depth);
    sketch.breaks_at = at->point.at;
    sketch.lasts = at->lasts;
    std::optional<ParticleCloud> cloud;
    if (at->whole) {
        outcome.fates = fates_of_whole(s, *at, f.spread);
    } else {
        cloud.emplace(cloud_of(s, *at, f));
        outcome.fates.assign(cloud->fates().begin(),
                             cloud->fates().begin() + static_cast<std::ptrdiff_t>(s.feed.grains.size()));
        // What meets the bed as a cloud runs out over it at least as far as what falls apart on it.
        const Length least = whole_patch * diameter_of(s.body.volume);
        for (GrainsFate& fate : outcome.fates) fate.spread = f.spread * std::max(fate.spread, least);
    }
    Hanging hanging;
    for (std::size_t i = 0; i < outcome.fates.size(); ++i)
        outcome.fates[i].sinks ? hanging.add(s.feed.grains[i].share, outcome.fates[i].lands.si())
                               : hanging.add_for_ever(s.feed.grains[i].share);
    add_fines(s, f, *at, cloud ? &*cloud : nullptr, hanging);
    constexpr std::array<double, 4> minutes{1, 5, 10, 30};
    for (std::size_t i = 0; i < minutes.size(); ++i) sketch.hanging[i] = hanging.after(minutes[i] * minute);
    summarise(s, outcome);
    return outcome;
}

}  // namespace baitwright
