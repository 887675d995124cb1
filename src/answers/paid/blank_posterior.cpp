#include "answers/paid/blank_posterior.h"

#include <array>
#include <cmath>

#include "answers/paid/grid_weights.h"

namespace baitwright {

namespace {

constexpr int mean_steps = 32;
constexpr std::array<double, 4> strengths{4, 8, 16, 32};
constexpr double prior_blank = 1, prior_caught = 3, all_alike = 0.2;

double log_beta(double a, double b) {
    return std::lgamma(a) + std::lgamma(b) - std::lgamma(a + b);
}

double log_evidence(double blank, double caught, int blanks, int catches) {
    return log_beta(blank + blanks, caught + catches) - log_beta(blank, caught);
}

Takings all_of(const std::vector<Takings>& ways) {
    Takings all;
    for (const Takings& way : ways) {
        all.blanks += way.blanks;
        all.caught += way.caught;
    }
    return all;
}

/// Of a mean of the chances, at the middle of its step: Beta(1, 3).
double log_mean_prior(double mean) {
    return std::log(3 * (1 - mean) * (1 - mean) / mean_steps / static_cast<double>(strengths.size()));
}

}  // namespace

BlankPosterior::BlankPosterior(const std::vector<Takings>& ways) : ways_(ways) {
    const Takings all = all_of(ways);
    cells_.push_back({prior_blank, prior_caught});
    std::vector<double> logs{std::log(all_alike) + log_evidence(prior_blank, prior_caught, all.blanks, all.caught)};
    for (int step = 0; step < mean_steps; ++step)
        for (const double strength : strengths) {
            const double mean = (step + 0.5) / mean_steps;
            const Cell cell{mean * strength, (1 - mean) * strength};
            double log = std::log(1 - all_alike) + log_mean_prior(mean);
            for (const Takings& way : ways) log += log_evidence(cell.blank, cell.caught, way.blanks, way.caught);
            cells_.push_back(cell);
            logs.push_back(log);
        }
    running_ = running_shares(std::move(logs));
    tables_.resize(cells_.size() * ways.size());
}

std::size_t BlankPosterior::world(double share) const {
    return place_of_share(running_, share);
}

double BlankPosterior::log_chance(std::size_t world, std::size_t way, double own_share, double shared_share) {
    const bool alike = world == 0;
    const Takings seen = alike ? all_of(ways_) : ways_[way];
    std::optional<BetaTable>& table = tables_[world * ways_.size() + (alike ? 0 : way)];
    if (!table) table.emplace(cells_[world].blank + seen.blanks, cells_[world].caught + seen.caught);
    return table->log_rest(alike ? shared_share : own_share);
}

}  // namespace baitwright
