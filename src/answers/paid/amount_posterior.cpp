#include "answers/paid/amount_posterior.h"

#include <algorithm>
#include <cmath>

#include "answers/paid/grid_weights.h"

namespace baitwright {

namespace {

constexpr double prior_freedom = 6, prior_scatter = 0.8;
constexpr int sigma_steps = 24, tau_steps = 40;
constexpr double tau_step = 0.05, sigma_reach = 4.5;  // the latter in standard deviations of ln sigma

struct Span {
    double low = 0, high = 0;
};

/// Where ln sigma may lie, with these squares of so many degrees of freedom.
Span log_sigma_span(double squares, double freedom) {
    const double all = freedom + prior_freedom;
    const double middle = 0.5 * std::log((squares + prior_freedom * prior_scatter * prior_scatter) / all);
    const double reach = sigma_reach / std::sqrt(2 * all);
    return {middle - reach, middle + reach};
}

/// Wide enough for no difference between the ways and for any.
Span log_sigma_span(const std::vector<Takings>& ways) {
    double within = 0, caught = 0, mean = 0, groups = 0;
    for (const Takings& way : ways) {
        if (way.caught == 0) continue;
        within += way.log_squares;
        caught += way.caught;
        mean += way.caught * way.log_mean;
        ++groups;
    }
    mean /= caught;
    double between = 0;
    for (const Takings& way : ways) between += way.caught * (way.log_mean - mean) * (way.log_mean - mean);
    const Span apart = log_sigma_span(within, caught - groups), alike = log_sigma_span(within + between, caught - 1);
    return {std::min(apart.low, alike.low), std::max(apart.high, alike.high)};
}

double log_prior(double sigma_squared, double tau) {
    const double log_sigma = 0.5 * std::log(sigma_squared);
    double log = -prior_freedom * log_sigma - 0.5 * prior_freedom * prior_scatter * prior_scatter / sigma_squared;
    if (tau <= 0) return log + std::log(AmountPosterior::no_difference);
    constexpr double scale = AmountPosterior::tau_scale;
    const double density = std::sqrt(2 / 3.14159265358979324) / scale * std::exp(-0.5 * tau * tau / (scale * scale));
    return log + std::log((1 - AmountPosterior::no_difference) * density * tau_step);
}

}  // namespace

AmountPosterior::AmountPosterior(const std::vector<Takings>& ways) : ways_(ways) {
    const Span span = log_sigma_span(ways);
    std::vector<double> logs;
    for (int s = 0; s < sigma_steps; ++s)
        for (int t = 0; t <= tau_steps; ++t) {
            const double tau = t == 0 ? 0 : (t - 0.5) * tau_step;
            Cell cell;
            cell.sigma_squared = std::exp(2 * (span.low + (s + 0.5) * (span.high - span.low) / sigma_steps));
            cell.tau_squared = tau * tau;
            double log = log_prior(cell.sigma_squared, tau), squares = 0, sum = 0;
            const double log_sigma = 0.5 * std::log(cell.sigma_squared);
            for (const Takings& way : ways) {
                if (way.caught == 0) continue;
                const double variance = cell.sigma_squared / way.caught + cell.tau_squared;
                log -= (way.caught - 1) * log_sigma + 0.5 * way.log_squares / cell.sigma_squared;
                log -= 0.5 * std::log(variance);
                cell.precision += 1 / variance;
                sum += way.log_mean / variance;
            }
            cell.mean = sum / cell.precision;
            for (const Takings& way : ways)
                if (way.caught > 0)
                    squares += (way.log_mean - cell.mean) * (way.log_mean - cell.mean) /
                               (cell.sigma_squared / way.caught + cell.tau_squared);
            logs.push_back(log - 0.5 * std::log(cell.precision) - 0.5 * squares);
            cells_.push_back(cell);
        }
    running_ = running_shares(std::move(logs));
}

AmountPosterior::World AmountPosterior::world(double share, double normal) const {
    const Cell& cell = cells_[place_of_share(running_, share)];
    return {cell.sigma_squared, cell.tau_squared, cell.mean + normal / std::sqrt(cell.precision)};
}

double AmountPosterior::log_amount(const World& world, std::size_t way, double normal) const {
    if (world.tau_squared <= 0) return world.mean;
    const Takings& takings = ways_[way];
    const double own = takings.caught / world.sigma_squared, shared = 1 / world.tau_squared;
    return (own * takings.log_mean + shared * world.mean) / (own + shared) + normal / std::sqrt(own + shared);
}

}  // namespace baitwright
