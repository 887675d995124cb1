#include "bait/kitchen_rounding.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>

#include "quantities/units.h"

namespace baitwright {

namespace {

struct Step {
    double below, step;
};

double rounded(double amount, std::initializer_list<Step> steps, double otherwise) {
    if (!(amount > 0)) return 0;
    double step = otherwise;
    for (const Step& one : steps)
        if (amount < one.below) {
            step = one.step;
            break;
        }
    constexpr double last_digits = 1e-12;  // what is a half but for them rounds up, whatever computed it
    return std::max(1.0, std::round(amount / step * (1 + last_digits))) * step;
}

double rounded_down(double amount, double step) {
    constexpr double last_digits = 1e-9;  // of a whole step, whatever computed it
    return std::floor(amount / step + last_digits) * step;
}

double rounded_additive(double amount) {
    return rounded(amount, {{5, 0.1}, {20, 0.5}, {100, 1}}, 5);
}

}  // namespace

Mass kitchen_mass(Mass mass) {
    return rounded(mass.in(gram), {{50, 1}, {2000, 5}}, 10) * gram;
}

Mass kitchen_weighed(Mass mass) {
    return mass < 5.0 * gram ? kitchen_additive(mass) : kitchen_mass(mass);
}

Mass kitchen_water(Mass water) {
    return rounded(water.in(gram), {{20, 1}, {2000, 5}}, 10) * gram;
}

Mass kitchen_additive(Mass mass) {
    return rounded_additive(mass.in(gram)) * gram;
}

Volume kitchen_additive(Volume volume) {
    return rounded_additive(volume.in(millilitre)) * millilitre;
}

Time kitchen_time(Time time) {
    return rounded(time.in(minute), {{9.5, 1}, {8 * 60 - 2.5, 5}}, 60) * minute;
}

Time kitchen_gap(Time time) {
    const double seconds = time.in(second);
    return rounded_down(seconds, seconds < 5 ? 1 : seconds < 300 ? 5 : seconds < 600 ? 60 : 300) * second;
}

Time told_gap(Time time) {
    const double seconds = time.in(second);
    return rounded_down(seconds, seconds < 300 ? 1 : 6) * second;
}

Time kitchen_soak_time(Time time) {
    const double seconds = time.in(second);
    return seconds < 1200 ? rounded(seconds, {{57.5, 5}, {285, 30}}, 60) * second : kitchen_time(time);
}

}  // namespace baitwright
