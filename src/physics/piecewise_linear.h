#pragma once

#include <span>

namespace baitwright {

struct Knot {
    double x, y;
};

/// Linear between the knots, flat outside. **Valid for**: at least one knot, x rising.
constexpr double piecewise_linear(std::span<const Knot> knots, double x) {
    if (x <= knots.front().x) return knots.front().y;
    for (std::size_t i = 1; i < knots.size(); ++i)
        if (x <= knots[i].x) {
            const Knot &a = knots[i - 1], &b = knots[i];
            return a.y + (x - a.x) / (b.x - a.x) * (b.y - a.y);
        }
    return knots.back().y;
}

}  // namespace baitwright
