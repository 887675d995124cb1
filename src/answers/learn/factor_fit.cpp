#include "answers/learn/factor_fit.h"

#include <algorithm>
#include <cmath>

namespace baitwright {

namespace {

using Two = std::array<double, 2>;

constexpr double factor_too_far = 3;  // sigmas
constexpr int most_factor_steps = 100, most_factor_halvings = 30, most_times_back = 3;
constexpr double least_factor_step = 1e-13;
constexpr std::size_t many_seen = 20;  // of so many, all about as far as the worst are set aside with it

double squares_sum(double a, double b) {
    return a * a + b * b;
}

/// The information of both logarithms, and the slope downhill.
struct TwoByTwo {
    double first, both, second;
    Two downhill;

    [[nodiscard]] double determinant() const { return first * second - both * both; }
    [[nodiscard]] Two step() const {
        return {(second * downhill[0] - both * downhill[1]) / determinant(),
                (first * downhill[1] - both * downhill[0]) / determinant()};
    }
    [[nodiscard]] double variance_of(const Two& slope) const {
        return (second * slope[0] * slope[0] - 2 * both * slope[0] * slope[1] + first * slope[1] * slope[1]) /
               determinant();
    }
};

class FactorSteps {
public:
    FactorSteps(const Two& before, const std::vector<FactorSeen>& seen, const FactorModel& model)
        : before_(before), seen_(seen), model_(model) {}

    [[nodiscard]] TwoByTwo linearised(const std::vector<char>& heeded, const Two& at) const {
        TwoByTwo there{1 / (before_[0] * before_[0]), 0, 1 / (before_[1] * before_[1]), {}};
        there.downhill = {-at[0] * there.first, -at[1] * there.second};
        for (std::size_t i = 0; i < seen_.size(); ++i) {
            if (!heeded[i]) continue;
            const FactorSlope by = model_(i, at);
            const double weight = 1 / (seen_[i].sigma * seen_[i].sigma), left = seen_[i].log_seen - by.log_value;
            there.first += weight * by.slope[0] * by.slope[0];
            there.both += weight * by.slope[0] * by.slope[1];
            there.second += weight * by.slope[1] * by.slope[1];
            for (std::size_t k = 0; k < 2; ++k) there.downhill[k] += weight * left * by.slope[k];
        }
        return there;
    }

    [[nodiscard]] double objective(const std::vector<char>& heeded, const Two& at) const {
        double sum = squares_sum(at[0] / before_[0], at[1] / before_[1]);
        for (std::size_t i = 0; i < seen_.size(); ++i)
            if (heeded[i]) sum += std::pow((seen_[i].log_seen - model_(i, at).log_value) / seen_[i].sigma, 2);
        return sum;
    }

    [[nodiscard]] Two best(const std::vector<char>& heeded, Two at) const {
        double now = objective(heeded, at);
        for (int i = 0; i < most_factor_steps; ++i) {
            Two step = linearised(heeded, at).step();
            Two next{at[0] + step[0], at[1] + step[1]};
            double there = objective(heeded, next);
            for (int h = 0; h < most_factor_halvings && !(there <= now * (1 + 1e-12)); ++h) {
                step = {step[0] / 2, step[1] / 2};
                next = {at[0] + step[0], at[1] + step[1]};
                there = objective(heeded, next);
            }
            if (!(there <= now * (1 + 1e-12))) break;
            at = next;
            now = there;
            if (std::max(std::abs(step[0]), std::abs(step[1])) < least_factor_step) break;
        }
        return at;
    }

    /// How far each lies, and what was to be expected of it.
    void foretell(FactorFit& fit) const {
        const TwoByTwo there = linearised(fit.heeded, fit.mean);
        fit.sigmas.clear();
        fit.log_expected.clear();
        for (std::size_t i = 0; i < seen_.size(); ++i) {
            const FactorSlope by = model_(i, fit.mean);
            const double own = seen_[i].sigma * seen_[i].sigma, variance = there.variance_of(by.slope);
            const double kept = fit.heeded[i] ? std::max(1e-9, 1 - variance / own) : 1;
            const double left = (seen_[i].log_seen - by.log_value) / kept;
            const double sigma = fit.heeded[i] ? seen_[i].sigma / std::sqrt(kept) : std::sqrt(own + variance);
            fit.sigmas.push_back(left / sigma);
            fit.log_expected.push_back(seen_[i].log_seen - left);
        }
    }

    void refit(FactorFit& fit) const {
        fit.mean = best(fit.heeded, fit.mean);
        const TwoByTwo there = linearised(fit.heeded, fit.mean);
        fit.sigma = {std::sqrt(there.variance_of({1, 0})), std::sqrt(there.variance_of({0, 1}))};
        foretell(fit);
    }

    /// Sets the worst aside; false where none is too far.
    [[nodiscard]] bool set_aside(FactorFit& fit) const {
        const auto counts = [&](std::size_t i) { return fit.heeded[i] && !seen_[i].is_sure; };
        double worst = factor_too_far;
        for (std::size_t i = 0; i < seen_.size(); ++i)
            if (counts(i)) worst = std::max(worst, std::abs(fit.sigmas[i]));
        if (!(worst > factor_too_far)) return false;
        const double least = seen_.size() > many_seen ? std::max(factor_too_far, 0.8 * worst) : worst;
        for (std::size_t i = 0; i < seen_.size(); ++i)
            if (counts(i) && std::abs(fit.sigmas[i]) >= least) fit.heeded[i] = 0;
        return true;
    }

private:
    Two before_;
    const std::vector<FactorSeen>& seen_;
    const FactorModel& model_;
};

}  // namespace

int FactorFit::times() const {
    return static_cast<int>(std::count(heeded.begin(), heeded.end(), 1));
}

FactorFit fit_factors(const Two& sigma_before, const std::vector<FactorSeen>& seen, const FactorModel& model) {
    const FactorSteps steps(sigma_before, seen, model);
    FactorFit fit;
    fit.heeded.assign(seen.size(), 1);
    std::vector<char> was_back(seen.size(), 0);
    steps.refit(fit);
    for (int back = 0; back <= most_times_back; ++back) {
        while (steps.set_aside(fit)) steps.refit(fit);
        bool any = false;
        for (std::size_t i = 0; i < seen.size() && back < most_times_back; ++i) {
            if (fit.heeded[i] || was_back[i] || std::abs(fit.sigmas[i]) > factor_too_far) continue;
            fit.heeded[i] = was_back[i] = 1;
            any = true;
        }
        if (!any) break;
        steps.refit(fit);
    }
    return fit;
}

FactorFit fit_factor(double sigma_before, const std::vector<FactorSeen>& seen) {
    return fit_factors({sigma_before, 1}, seen, [](std::size_t, const Two& at) { return FactorSlope{at[0], {1, 0}}; });
}

}  // namespace baitwright
