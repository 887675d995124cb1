#pragma once

#include <cstddef>
#include <vector>

#include "answers/paid/takings.h"

namespace baitwright {

/// What a session brings that is no blank, over all ways of feeding at once: ln y ~ N(mu_k, sigma^2), mu_k ~ N(mu_0,
/// tau^2), mu_0 flat. sigma^2 ~ scaled inverse chi-square (6 degrees of freedom, 0.8^2); tau = 0 for one in ten, else
/// half normal of 0.6. sigma and tau on a grid, mu_0 and mu_k exactly.
/// **Source**: Gelman et al., Bayesian Data Analysis, section 5.4 (from memory); the priors are ours.
/// **Valid for**: at least one session that is no blank.
/// **Test**: `tests/answers/catch_model_test.cpp`, against NumPy and SciPy.
class AmountPosterior {
public:
    static constexpr double tau_scale = 0.6, no_difference = 0.1;  ///< of the prior of tau

    explicit AmountPosterior(const std::vector<Takings>& ways);

    /// What goes for all ways in one world.
    struct World {
        double sigma_squared = 0, tau_squared = 0, mean = 0;
    };
    /// The world at that share of the grid (0..1), with a standard normal for mu_0.
    [[nodiscard]] World world(double share, double normal) const;
    /// mu of a way in that world, by a standard normal of its own; mu_0 itself where tau is 0.
    [[nodiscard]] double log_amount(const World& world, std::size_t way, double normal) const;

private:
    struct Cell {
        double sigma_squared = 0, tau_squared = 0, mean = 0, precision = 0;
    };
    std::vector<Takings> ways_;
    std::vector<Cell> cells_;
    std::vector<double> running_;
};

}  // namespace baitwright
