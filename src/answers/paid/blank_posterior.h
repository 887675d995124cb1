#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "answers/paid/beta_table.h"
#include "answers/paid/takings.h"

namespace baitwright {

/// How often a session is a blank, over all ways of feeding at once. For one in five all have one chance ~ Beta(1, 3);
/// else pi_k ~ Beta(m s, (1 - m) s), with m ~ Beta(1, 3) on a grid and s one of 4, 8, 16, 32.
/// **Source**: Gelman et al., Bayesian Data Analysis, section 5.3 (from memory); the priors are ours.
/// **Test**: `tests/answers/catch_model_test.cpp`, against NumPy and SciPy.
class BlankPosterior {
public:
    explicit BlankPosterior(const std::vector<Takings>& ways);

    /// The world at that share of the grid (0..1).
    [[nodiscard]] std::size_t world(double share) const;
    /// ln of the chance that a session is no blank, by a share of the way's own; in the world where all are alike by
    /// the share that all have.
    double log_chance(std::size_t world, std::size_t way, double own_share, double shared_share);

private:
    struct Cell {
        double blank = 0, caught = 0;  ///< the parameters of the Beta distribution before any session
    };
    std::vector<Takings> ways_;
    std::vector<Cell> cells_;  ///< the first: all alike
    std::vector<double> running_;
    std::vector<std::optional<BetaTable>> tables_;  ///< made when they are first asked for
};

}  // namespace baitwright
