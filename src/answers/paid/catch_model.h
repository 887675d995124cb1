#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "answers/paid/takings.h"
#include "answers/shared/range.h"

namespace baitwright {

/// Equally likely worlds, each with what is to be expected of a session of every way of feeding.
struct DrawnTakings {
    std::size_t ways = 0, worlds = 0;
    std::vector<double> logs;     ///< ln of it: way by way, world by world
    double session_variance = 0;  ///< how much one session scatters: mean of sigma^2 + pi / (1 - pi)

    [[nodiscard]] double log_of(std::size_t way, std::size_t world) const { return logs[way * worlds + world]; }
    /// What a session of that way is to be expected to bring; 9 in 10.
    [[nodiscard]] Range<double> expected(std::size_t way) const;
    /// The chance of each way that it brings most of all; where several bring the same, they share it.
    [[nodiscard]] std::vector<double> chances_of_most() const;
};

/// A session is a blank with probability pi_k, else log-normal (`BlankPosterior`, `AmountPosterior`): it brings (1 -
/// pi_k) exp(mu_k + sigma^2 / 2). 2,048 quasi-random worlds; of all ways at once, so that what they share stays shared.
/// No worlds where nothing was ever caught.
/// **Test**: `tests/answers/catch_model_test.cpp`, against NumPy and SciPy.
DrawnTakings draw_takings(const std::vector<Takings>& ways, std::uint64_t seed);

}  // namespace baitwright
