#include "physics/tow.h"

#include <algorithm>
#include <cmath>

namespace baitwright {

namespace {

constexpr double bed_roughness = 0.005;  // k, m

/// ln(depth/k), and the share of depth at which the water of a river stands.
double logarithm(Length depth) {
    return std::log(std::max(depth.si(), 4 * bed_roughness) / bed_roughness);
}

}  // namespace

Speed Tow::at(Length below_surface) const {
    const double s = std::clamp<double>(below_surface / depth, 0.0, 1.0);
    switch (profile) {
        case TowProfile::lake:
            return (1 - s) * (1 - 3 * s) * top;
        case TowProfile::river:
            return s < 1 ? std::max(0.0, 1 + std::log1p(-s) / logarithm(depth)) * top : Speed{};
        default:
            return top + s * (bottom - top);
    }
}

double Tow::flow_above(double s) const {
    switch (profile) {
        case TowProfile::lake:
            return top.si() * s * (1 - s) * (1 - s);
        case TowProfile::river: {
            // With y = 1 - s: the integral of 1 + ln(y)/L from y to 1, down to where that is 0.
            const double l = logarithm(depth), y = std::max(1 - s, std::exp(-l));
            return top.si() * ((1 - y) - (1 - y + y * std::log(y)) / l);
        }
        default:
            return s * (top.si() + 0.5 * s * (bottom.si() - top.si()));
    }
}

Speed Tow::mean_between(Length from, Length to) const {
    const double above = std::clamp<double>(from / depth, 0.0, 1.0), below = std::clamp<double>(to / depth, 0.0, 1.0);
    if (!(below - above > 1e-9)) return at(from);
    return Speed::from_si((flow_above(below) - flow_above(above)) / (below - above));
}

}  // namespace baitwright
