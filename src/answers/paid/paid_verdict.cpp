#include "answers/paid/paid_verdict.h"

#include <algorithm>
#include <cmath>

#include "answers/paid/amount_posterior.h"
#include "answers/paid/grid_weights.h"
#include "physics/quasi_random.h"
#include "quantities/sort_stably.h"

namespace baitwright {

namespace {

constexpr int most_more = 99;

/// The chance that the first brings more, to be expected where ln(times) is found with that error.
double chance_with_error(double log_times, double error) {
    const double usual = 2 * AmountPosterior::tau_scale * AmountPosterior::tau_scale;  // variance of ln(times)
    const double kept = usual / (usual + error * error);
    const double z = log_times / error * std::sqrt(kept);
    const double for_difference = std::sqrt(1 - kept) * std::exp(0.5 * z * z);
    const double none = AmountPosterior::no_difference /
                        (AmountPosterior::no_difference + (1 - AmountPosterior::no_difference) * for_difference);
    return (1 - none) * normal_share(z) + none / 2;
}

std::optional<int> more_until_sure(const PaidVerdict& verdict, double variance, int of_one, int of_other) {
    if (verdict.is_sure || verdict.probability < worth_speaking || !(verdict.times.middle > 1)) return {};
    for (int more = 1; more <= most_more; ++more) {
        const double error = std::sqrt(variance * (1.0 / (of_one + more) + 1.0 / (of_other + more)));
        if (std::min(of_one, of_other) + more >= fewest_sessions &&
            chance_with_error(std::log(verdict.times.middle), error) > sure_chance)
            return more;
    }
    return {};
}

}  // namespace

std::vector<std::size_t> best_first(const DrawnTakings& drawn, std::size_t ways) {
    std::vector<std::size_t> order(ways);
    std::vector<double> expected;
    for (std::size_t way = 0; way < ways; ++way) {
        order[way] = way;
        expected.push_back(drawn.expected(way).middle);
    }
    sort_stably(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return expected[a] > expected[b]; });
    return order;
}

PaidVerdict verdict_of(const DrawnTakings& drawn, const std::vector<Takings>& ways, std::size_t ahead,
                       std::size_t other) {
    std::vector<double> logs;
    double chance = 0;
    for (std::size_t world = 0; world < drawn.worlds; ++world) {
        logs.push_back(drawn.log_of(ahead, world) - drawn.log_of(other, world));
        chance += logs.back() > 0 ? 1 : logs.back() < 0 ? 0 : 0.5;
    }
    PaidVerdict verdict;
    verdict.probability = chance / static_cast<double>(drawn.worlds);
    const auto at = [&](double share) { return std::exp(quantile_in_place(logs, share)); };
    verdict.times.low = at(0.05);
    verdict.times.middle = at(0.5);
    verdict.times.high = at(0.95);
    const int least = std::min(ways[ahead].sessions(), ways[other].sessions());
    verdict.is_sure = least >= fewest_sessions && verdict.probability > sure_chance;
    verdict.more_sessions =
        more_until_sure(verdict, drawn.session_variance, ways[ahead].sessions(), ways[other].sessions());
    return verdict;
}

}  // namespace baitwright
