#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace baitwright {

/// Turns logarithms of weights into running sums that end at 1.
inline std::vector<double> running_shares(std::vector<double> log_weights) {
    const double most = *std::max_element(log_weights.begin(), log_weights.end());
    double sum = 0;
    for (double& weight : log_weights) weight = (sum += std::exp(weight - most));
    for (double& weight : log_weights) weight /= sum;
    return log_weights;
}

/// The place at which running sums first reach that share.
inline std::size_t place_of_share(const std::vector<double>& running, double share) {
    const auto place =
        static_cast<std::size_t>(std::lower_bound(running.begin(), running.end(), share) - running.begin());
    return std::min(place, running.size() - 1);
}

/// The share of a standard normal below z.
inline double normal_share(double z) {
    return 0.5 * std::erfc(-z * 0.70710678118654752);
}

}  // namespace baitwright
