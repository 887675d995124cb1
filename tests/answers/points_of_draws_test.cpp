#include "answers/mix/points_of_draws.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

using namespace baitwright;

namespace {

constexpr double sigma = 0.12;

/// P(U H + V <= q), by the C++ library's erfc.
double share_below(const Draws& draws, double q) {
    double sum = 0;
    for (std::size_t i = 0; i < draws.fixed.size(); ++i) {
        const double rest = q - draws.fixed[i];
        if (rest > 0 && draws.by_shared[i] > 0)
            sum += 0.5 * std::erfc(-std::log(rest / draws.by_shared[i]) / (sigma * std::numbers::sqrt2));
        else if (rest >= 0)
            sum += 1;
    }
    return sum / static_cast<double>(draws.fixed.size());
}

/// So many draws whose U goes from 0.4 to 0.8, and V over that reach round a middle.
Draws spread_draws(std::size_t count, double middle, double reach) {
    Draws draws(count);
    for (std::size_t i = 0; i < count; ++i) {
        const auto place = static_cast<double>(i);
        draws.by_shared[i] = 0.4 + 0.4 * place / static_cast<double>(count);
        draws.fixed[i] = middle + reach * (std::fmod(place * std::numbers::phi, 1) - 0.5);
    }
    return draws;
}

void check_points(const Draws& draws) {
    const Range<Ratio> points = points_of(draws, sigma, 0);
    CHECK(share_below(draws, points.low) == Approx(0.05).margin(1e-3));
    CHECK(share_below(draws, points.middle) == Approx(0.5).margin(1e-3));
    CHECK(share_below(draws, points.high) == Approx(0.95).margin(1e-3));
}

}  // namespace

TEST_CASE("the points of draws leave 5, 50 and 95 % below them, whether little or much is fixed") {
    for (const std::size_t count : {1000U, 1024U, 63U}) {
        check_points(spread_draws(count, 0, 0.05));   // little: by series
        check_points(spread_draws(count, 0, 0.6));    // much, of either sign
        check_points(spread_draws(count, 0.9, 0.4));  // so much that nothing is left of some low q
        check_points(spread_draws(count, -0.2, 0.1));
    }
}

TEST_CASE("draws that want nothing of the shared factor count as below all that is left of q") {
    Draws draws = spread_draws(1000, 0, 0.05);
    for (std::size_t i = 0; i < draws.by_shared.size(); i += 10) draws.by_shared[i] = 0;
    const Range<Ratio> points = points_of(draws, sigma, 0);
    CHECK(share_below(draws, points.middle) == Approx(0.5).margin(1e-3));
    CHECK(share_below(draws, points.high) == Approx(0.95).margin(1e-3));
    CHECK(points.low < 0.1);
}

TEST_CASE("no point of draws lies below the least") {
    const Range<Ratio> points = points_of(spread_draws(1000, 0, 0.05), sigma, 0.6);
    CHECK(points.low == 0.6);
    CHECK(points.high > 0.6);
}
