#include "physics/falling_body.h"

#include <algorithm>
#include <array>
#include <boost/numeric/odeint/integrate/max_step_checker.hpp>
#include <boost/numeric/odeint/stepper/generation.hpp>
#include <boost/numeric/odeint/stepper/runge_kutta_dopri5.hpp>
#include <cmath>
#include <numbers>

namespace baitwright {

namespace {

using State = std::array<double, 3>;  // depth, speed, drift

struct Motion {
    double mass, weight, air, fades, water, volume, resistance;  // SI; weight in kg under water
    Tow tow;

    void operator()(const State& s, State& change, double t) const {
        const double left = air * std::exp(-t / fades);
        const double moved = mass + water * (air - left) + 0.5 * water * volume;
        const double force = standard_gravity * (weight - water * left) - resistance * s[1] * std::abs(s[1]);
        change = {s[1], (force - s[1] * water * left / fades) / moved, tow.at(Length::from_si(s[0])).si()};
    }
};

Motion motion_of(const FallingBody& body, const StillWater& water, const Tow& tow) {
    const double radius = std::cbrt(body.volume.si() * 3 / (4 * std::numbers::pi));
    const double resistance = 0.5 * body.drag * water.density.si() * std::numbers::pi * radius * radius;
    return {body.mass.si(),     body.under_water.si(), body.air.si(), body.air_fades.si(),
            water.density.si(), body.volume.si(),      resistance,    tow};
}

FallPoint point_of(const State& s, double t) {
    return {Time::from_si(t), Length::from_si(s[0]), Speed::from_si(s[1]), Length::from_si(s[2])};
}

/// At rest at the surface, where it has waited until it sinks.
auto stepper_from_rest(double waits, const Tow& tow) {
    constexpr double accuracy = 1e-11;
    constexpr double longest_step = 0.25;  // once it falls evenly, steps would grow by the noise of the last digits
    auto stepper = boost::numeric::odeint::make_dense_output(accuracy, accuracy, longest_step,
                                                             boost::numeric::odeint::runge_kutta_dopri5<State>());
    stepper.initialize(State{0, 0, waits * tow.top.si()}, waits, 1e-3);
    return stepper;
}

FallPoint waiting(Time at, const Tow& tow) {
    return {at, {}, {}, at * tow.top};
}

}  // namespace

Time waits_afloat(const FallingBody& body, const StillWater& water) {
    const double buoyed = water.density * body.air / body.under_water;
    return buoyed > 1 ? std::log(buoyed) * body.air_fades : Time{};
}

std::optional<FallPoint> fall_from_rest(const FallingBody& body, const StillWater& water, const Tow& tow,
                                        Length to_depth, Time for_time) {
    if (!(body.under_water > Mass{})) return std::nullopt;
    const Motion motion = motion_of(body, water, tow);
    const double waits = waits_afloat(body, water).si();
    if (waits >= for_time.si()) return waiting(for_time, tow);
    auto stepper = stepper_from_rest(waits, tow);
    const double last = for_time.si(), bottom = to_depth.si();
    while (stepper.current_time() < last && stepper.current_state()[0] < bottom) stepper.do_step(motion);
    double early = stepper.previous_time(), late = std::min(stepper.current_time(), last);
    State end;
    stepper.calc_state(late, end);
    if (end[0] <= bottom) return point_of(end, late);
    for (int halving = 0; halving < 60 && late - early > 1e-12 * late; ++halving) {
        const double middle = 0.5 * (early + late);
        stepper.calc_state(middle, end);
        (end[0] < bottom ? early : late) = middle;
    }
    return point_of(end, late);
}

std::vector<FallPoint> fall_from_rest(const FallingBody& body, const StillWater& water, const Tow& tow,
                                      std::span<const Time> times) {
    std::vector<FallPoint> points;
    if (!(body.under_water > Mass{})) return points;
    const Motion motion = motion_of(body, water, tow);
    const Time waits = waits_afloat(body, water);
    auto stepper = stepper_from_rest(waits.si(), tow);
    for (const Time time : times) {
        if (time <= waits) {
            points.push_back(waiting(time, tow));
            continue;
        }
        while (stepper.current_time() < time.si()) stepper.do_step(motion);
        State there;
        stepper.calc_state(time.si(), there);
        points.push_back(point_of(there, time.si()));
    }
    return points;
}

}  // namespace baitwright
