#include "answers/paid/beta_table.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "answers/paid/grid_weights.h"

namespace baitwright {

namespace {

constexpr std::size_t beta_steps = 256;
constexpr double beta_step = 3.14159265358979324 / 2 / beta_steps;
constexpr double no_more = 25;  // logarithms below the fullest step

/// ln sin t in the middle of each step; ln cos t is the same backwards.
const std::array<double, beta_steps>& log_sines() {
    static const std::array<double, beta_steps> logs = [] {
        std::array<double, beta_steps> made{};
        for (std::size_t i = 0; i < beta_steps; ++i)
            made[i] = std::log(std::sin((static_cast<double>(i) + 0.5) * beta_step));
        return made;
    }();
    return logs;
}

/// What the step at an end holds against the density in its middle: the density there goes by t^(2a - 1).
double log_end(double a) {
    return (2 * a - 1) * std::log(2.0) - std::log(2 * a);
}

}  // namespace

BetaTable::BetaTable(double a, double b) {
    const auto& sines = log_sines();
    std::array<double, beta_steps> logs{};
    for (std::size_t i = 0; i < beta_steps; ++i)
        logs[i] = (2 * a - 1) * sines[i] + (2 * b - 1) * sines[beta_steps - 1 - i];
    logs.front() += log_end(a);
    logs.back() += log_end(b);
    const double least = *std::max_element(logs.begin(), logs.end()) - no_more;
    std::size_t last = beta_steps;
    while (logs[first_] < least) ++first_;
    while (logs[last - 1] < least) --last;
    running_ = running_shares(
        {logs.begin() + static_cast<std::ptrdiff_t>(first_), logs.begin() + static_cast<std::ptrdiff_t>(last)});
}

double BetaTable::log_rest(double share) const {
    const std::size_t place = place_of_share(running_, share);
    const double before = place == 0 ? 0 : running_[place - 1];
    const double within = std::clamp((share - before) / (running_[place] - before), 0.0, 1.0 - 1e-9);
    const double cosine = std::cos((static_cast<double>(first_ + place) + within) * beta_step);
    return 2 * std::log(cosine);
}

}  // namespace baitwright
