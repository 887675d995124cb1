#include "answers/drop/drop_sketch.h"

#include <algorithm>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <limits>

#include "answers/drop/drop_break.h"
#include "answers/drop/drop_fates.h"
#include "physics/slaking_lump.h"

namespace baitwright {

namespace {

/// Shares of all of it that have not landed after 1, 5, 10, 30 min: grains by their landing, fines by where they were
/// shed.
std::array<double, 4> hanging_of(const DropFates& fates) {
    constexpr std::array<double, 4> minutes{1, 5, 10, 30};
    std::array<double, 4> landed{};
    double all = 0;
    const auto add = [&](double share, double lands) {
        all += share;
        for (std::size_t i = 0; i < minutes.size(); ++i)
            if (lands <= 60 * minutes[i]) landed[i] += share;
    };
    for (const Settled& s : fates.settled)
        add(s.share, s.fate.sinks ? s.fate.lands.si() : std::numeric_limits<double>::infinity());
    for (const SlowFines& f : fates.fines) add(f.share, f.lands);
    for (double& share : landed) share = all > 0 ? 1 - share / all : 0;
    return landed;
}

template <class Value>
std::vector<std::pair<double, double>> sinking(const std::vector<Settled>& settled, Value value) {
    std::vector<std::pair<double, double>> values;
    values.reserve(settled.size());
    for (const Settled& s : settled)
        if (s.fate.sinks) values.emplace_back(value(s.fate).si(), s.share);
    std::sort(values.begin(), values.end());
    return values;
}

/// As `point_of`, of values in their order.
double point_in_order(const std::vector<std::pair<double, double>>& values, double q) {
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

template <class Q>
Points<Q> points_of(const std::vector<std::pair<double, double>>& values) {
    return {Q::from_si(point_in_order(values, 0.1)), Q::from_si(point_in_order(values, 0.5)),
            Q::from_si(point_in_order(values, 0.9))};
}

void summarise(DropOutcome& outcome) {
    DropSketch& sketch = outcome.sketch;
    const auto lands = sinking(outcome.settled, [](const GrainsFate& f) { return f.lands; });
    if (lands.empty()) return;
    const auto drifts = sinking(outcome.settled, [](const GrainsFate& f) { return f.drift; });
    sketch.landed = points_of<Time>(lands);
    sketch.drift = points_of<Length>(drifts);
    std::vector<EvenPatch> patches;
    patches.reserve(outcome.settled.size());
    for (const Settled& s : outcome.settled)
        if (s.fate.sinks) patches.push_back({s.fate.spread, s.share});
    sketch.width = {width_of(patches, 0.5), width_of(patches, 0.9)};
    const auto between = [&](double q) {
        return std::array{Length::from_si(point_in_order(drifts, 0.5 - q / 2)),
                          Length::from_si(point_in_order(drifts, 0.5 + q / 2))};
    };
    sketch.drift_of_half = between(0.5);
    sketch.drift_of_most = between(0.9);
    sketch.length = {sketch.width.half + sketch.drift_of_half[1] - sketch.drift_of_half[0],
                     sketch.width.most + sketch.drift_of_most[1] - sketch.drift_of_most[0]};
}

/// Until half of what floats at first has gone down.
Time raft_of(const DropSetup& s) {
    std::vector<std::pair<double, double>> until;
    for (const GrainClass& g : s.feed.grains)
        if (g.afloat) until.emplace_back(g.afloat->until.si(), double(g.share));
    return until.empty() ? Time{} : Time::from_si(point_of(until, 0.5));
}

/// How deep half of a ball has gone that is all gone before the bed.
std::optional<Length> half_worn_at(const DropSetup& s, const DropFactors& f, const Break& at) {
    if (!at.wears || at.whole) return std::nullopt;
    const Time half = at.waits + SlakingLump{{}, at.holds - at.waits}.gone(0.5);
    const std::vector<FallPoint> there = falls_of(s, f, std::array{half});
    return there.empty() ? Length{} : there.front().depth;
}

}  // namespace

double point_of(std::vector<std::pair<double, double>> values, double q) {
    std::sort(values.begin(), values.end());
    return point_in_order(values, q);
}

Length width_of(std::span<const EvenPatch> patches, double q) {
    double all = 0, widest = 0;
    for (const EvenPatch& patch : patches) {
        all += patch.share;
        widest = std::max(widest, patch.radius.si());
    }
    if (!(all > 0)) return {};
    const auto missing = [&](double r) {
        double inside = 0;
        for (const EvenPatch& patch : patches)
            inside += patch.share * std::min(1.0, r * r / (patch.radius.si() * patch.radius.si()));
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
        const auto point = straight ? std::nullopt : fall_of(s, {}, down, never_breaks);
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
    const bool near_surface = at->point.depth < 0.25 * diameter_of(s.body.volume);
    sketch.breaks = at->whole ? Breaks::bottom : near_surface ? Breaks::surface : Breaks::midwater;
    sketch.breaks_depth = near_surface ? Length{} : std::min(at->point.depth, s.tow.depth);
    sketch.breaks_at = at->point.at;
    sketch.lasts = at->whole ? std::max(Time{}, at->holds - at->point.at) : Time{};
    const DropFates fates = fates_of(s, *at, f);
    sketch.lands_as_one = fates.lands_as_one;
    sketch.half_worn = half_worn_at(s, f, *at);
    sketch.hanging = hanging_of(fates);
    outcome.settled = fates.settled;
    outcome.raft = raft_of(s);
    summarise(outcome);
    return outcome;
}

}  // namespace baitwright
