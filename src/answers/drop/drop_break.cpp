#include "answers/drop/drop_break.h"

#include <algorithm>

namespace baitwright {

namespace {

constexpr double bursts_when_thrown = 1.07;  // the upper edge of crumbly

Time default_hold(const DropSetup& s) {
    return holds(s.how, s.wetness, diameter_of(s.body.volume), s.binder, s.request->squeeze);
}

double ratio_of(Time held, Time usual) {
    return usual > Time{} ? double(held / usual) : 1;
}

FallingBody body_of(const DropSetup& s, const DropFactors& f) {
    FallingBody body = s.body;
    body.drag = f.drag * body.drag;
    return body;
}

std::optional<Break> break_falling(const DropSetup& s, const DropFactors& f) {
    const OwnLook& own = s.request->own;
    const Time usual = default_hold(s);
    const bool seen = s.how == Hold::heaped && own.breaks_at;
    Time held = own.holds.value_or((s.how == Hold::heaped ? f.breaking : f.hold) * usual);
    const Length to = seen ? std::min(*own.breaks_at, s.tow.depth) : s.tow.depth;
    const Time waits = waits_afloat(s.body, s.water);  // what lies on the water does not wear yet
    const auto point = fall_of(s, f, to, seen ? never_breaks : waits + held);
    if (!point) return std::nullopt;
    if (seen) held = point->at - waits;
    Break at;
    at.point = *point;
    at.whole = point->depth >= s.tow.depth * (1 - 1e-9);
    at.wears = s.how == Hold::squeezed;
    at.waits = waits;
    at.holds = waits + held;
    at.fit = ratio_of(held, usual);
    return at;
}

bool ever_sinks(const DropSetup& s) {
    const auto sinks = [](const GrainClass& g) { return g.settling > Speed{} || g.afloat; };
    return std::any_of(s.feed.grains.begin(), s.feed.grains.end(), sinks);
}

}  // namespace

std::optional<FallPoint> fall_of(const DropSetup& s, const DropFactors& f, Length depth, Time time) {
    return fall_from_rest(body_of(s, f), s.water, s.tow, depth, time);
}

std::vector<FallPoint> falls_of(const DropSetup& s, const DropFactors& f, std::span<const Time> times) {
    return fall_from_rest(body_of(s, f), s.water, s.tow, times);
}

std::optional<Break> break_of(const DropSetup& s, const DropFactors& f) {
    const DropRequest& request = *s.request;
    if (std::holds_alternative<DroppedFeeder>(request.form)) {
        const Time held = request.own.holds.value_or(f.hold * default_hold(s));
        Break landed;
        landed.point.depth = s.tow.depth;
        landed.whole = true;
        landed.holds = held;
        return landed;
    }
    if (!(s.body.under_water > Mass{})) {
        if (!ever_sinks(s)) return std::nullopt;
        Break raft;
        raft.raft = true;
        return raft;
    }
    if (std::holds_alternative<DroppedLoose>(request.form)) return Break{};
    if (s.how == Hold::squeezed && request.thrown && s.wetness < bursts_when_thrown) return Break{};
    return break_falling(s, f);
}

}  // namespace baitwright
