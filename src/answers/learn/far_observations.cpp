#include "answers/learn/far_observations.h"

#include <algorithm>
#include <cmath>

namespace baitwright {

namespace {

constexpr double too_far = 3;           // sigmas
constexpr double hardly_touched = 0.1;  // sigmas, by what another set aside moves it
constexpr double rough_step = 1e-6;     // of a fit that is made again
constexpr int most_rounds = 100;

/// What the heeded observations of a day share: sum w J over kappa, and the covariance of it.
struct SharedByDay {
    LinearForm slope;
    std::vector<double> with;  // each unknown
    double variance = 0, of_day = 0;
};

class LeftOut {
public:
    LeftOut(const WaterProblem& problem, const std::vector<char>& heeded, const WaterFit& fit)
        : problem_(problem), heeded_(heeded), covariance_(fit), days_(problem.days) {
        for (const WaterSeen& seen : problem.seen) slopes_.push_back(slope_of(problem.unknowns, seen.terms, fit.best));
        for (std::size_t i = 0; i < slopes_.size(); ++i) {
            const WaterSeen& seen = problem.seen[i];
            if (!seen.day || !heeded[i]) continue;
            LinearForm& sum = days_[*seen.day].slope;
            sum = sum_of(sum, slopes_[i].slope, 1 / (seen.sigma * seen.sigma * fit.day_weight[*seen.day]));
        }
        for (std::size_t d = 0; d < days_.size(); ++d) {
            SharedByDay& day = days_[d];
            day.with = covariance_.with(day.slope);
            for (const auto& [i, by] : day.slope) day.variance += by * day.with[i];
            day.of_day = 1 / fit.day_weight[d];
        }
        for (std::size_t i = 0; i < slopes_.size(); ++i) foretell(i, fit);
    }

    [[nodiscard]] const std::vector<Foretold>& all() const { return all_; }

    /// How many sigmas farther one lies once another is set aside too.
    [[nodiscard]] std::vector<double> moved_by(std::size_t aside, const std::vector<std::size_t>& others) const {
        const WaterSeen& gone = problem_.seen[aside];
        const std::vector<double> with = covariance_.with(with_day(aside));
        const double push = all_[aside].sigmas / (gone.sigma * std::sqrt(1 - leverage_[aside]));
        std::vector<double> moved;
        for (const std::size_t other : others) {
            const WaterSeen& seen = problem_.seen[other];
            double shared = seen.day && seen.day == gone.day ? days_[*seen.day].of_day : 0;
            for (const auto& [i, by] : with_day(other)) shared += by * with[i];
            moved.push_back(shared * push / (seen.sigma * std::sqrt(1 - leverage_[other])));
        }
        return moved;
    }

private:
    [[nodiscard]] LinearForm with_day(std::size_t i) const {
        const WaterSeen& seen = problem_.seen[i];
        return seen.day ? sum_of(slopes_[i].slope, days_[*seen.day].slope, -1) : slopes_[i].slope;
    }

    void foretell(std::size_t i, const WaterFit& fit) {
        const WaterSeen& seen = problem_.seen[i];
        double variance = covariance_.of(slopes_[i].slope), expected = slopes_[i].log_value;
        if (seen.day) {
            const SharedByDay& day = days_[*seen.day];
            for (const auto& [j, by] : slopes_[i].slope) variance -= 2 * by * day.with[j];
            variance += day.variance + day.of_day;
            expected += fit.day[*seen.day];
        }
        const double own = seen.sigma * seen.sigma;
        const double leverage = heeded_[i] ? std::min(variance / own, 1 - 1e-9) : 0;
        leverage_.push_back(leverage);
        const double sigma = heeded_[i] ? seen.sigma * std::sqrt(1 - leverage) : std::sqrt(own + variance);
        const double left = seen.log_seen - expected;
        all_.push_back({left / sigma, seen.log_seen - (heeded_[i] ? left / (1 - leverage) : left)});
    }

    const WaterProblem& problem_;
    const std::vector<char>& heeded_;
    WaterCovariance covariance_;
    std::vector<SumSlope> slopes_;
    std::vector<SharedByDay> days_;
    std::vector<double> leverage_;
    std::vector<Foretold> all_;
};

/// Those to set aside in one round, the worst first.
std::vector<std::size_t> worst_of(const WaterProblem& problem, const std::vector<char>& heeded,
                                  const LeftOut& left_out) {
    std::vector<std::size_t> far;
    for (std::size_t i = 0; i < problem.seen.size(); ++i)
        if (heeded[i] && !problem.seen[i].is_sure && std::abs(left_out.all()[i].sigmas) > too_far) far.push_back(i);
    const auto sigmas = [&](std::size_t i) { return std::abs(left_out.all()[i].sigmas); };
    std::stable_sort(far.begin(), far.end(), [&](std::size_t a, std::size_t b) { return sigmas(a) > sigmas(b); });
    std::vector<double> now(far.size());
    for (std::size_t k = 0; k < far.size(); ++k) now[k] = left_out.all()[far[k]].sigmas;
    std::vector<std::size_t> worst;
    while (!far.empty()) {
        const std::size_t one = far.front();
        worst.push_back(one);
        const std::vector<std::size_t> others(far.begin() + 1, far.end());
        const std::vector<double> moved = left_out.moved_by(one, others);
        far.clear();
        std::vector<double> then;
        for (std::size_t k = 0; k < others.size(); ++k) {
            const double moved_to = now[k + 1] + moved[k];
            if (std::abs(moved[k]) >= hardly_touched || !(std::abs(moved_to) > too_far)) continue;
            far.push_back(others[k]);
            then.push_back(moved_to);
        }
        now = std::move(then);
    }
    return worst;
}

}  // namespace

std::vector<Foretold> foretold(const WaterProblem& problem, const std::vector<char>& heeded, const WaterFit& fit) {
    return LeftOut(problem, heeded, fit).all();
}

BorneOut borne_out(const WaterProblem& problem) {
    std::vector<char> heeded(problem.seen.size(), 1), taken_back(problem.seen.size(), 0);
    WaterFit fit = best_fit(problem, {{}, heeded, rough_step});
    for (int round = 0; round < most_rounds; ++round) {
        const LeftOut left_out(problem, heeded, fit);
        bool changed = false;
        for (const std::size_t i : worst_of(problem, heeded, left_out)) {
            heeded[i] = 0;
            changed = true;
        }
        if (!changed)
            for (std::size_t i = 0; i < heeded.size(); ++i) {
                if (heeded[i] || taken_back[i] || std::abs(left_out.all()[i].sigmas) > too_far) continue;
                heeded[i] = taken_back[i] = 1;
                changed = true;
            }
        if (!changed) break;
        fit = best_fit(problem, {fit.best, heeded, rough_step});
    }
    fit = best_fit(problem, {fit.best, heeded});
    std::vector<Foretold> all = foretold(problem, heeded, fit);
    return {std::move(heeded), std::move(fit), std::move(all)};
}

}  // namespace baitwright
