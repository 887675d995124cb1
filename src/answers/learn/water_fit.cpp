#include "answers/learn/water_fit.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <cmath>

#include "bait/hand.h"
#include "physics/normal_quantile.h"

namespace baitwright {

namespace {

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;

constexpr int most_steps = 200, most_halvings = 30;
constexpr double rounding = 1e-11;  // of a step: it need not get any shorter

Eigen::Index index(std::size_t i) {
    return static_cast<Eigen::Index>(i);
}

double weight_of(const WaterSeen& seen) {
    return 1 / (seen.sigma * seen.sigma);
}

/// What is left of each observation, and the sum that is to be the least: half of z'z and of the weighted squares.
struct Leftover {
    std::vector<double> left, day_weight, day_sum;
    double objective = 0;

    [[nodiscard]] double day(std::size_t d) const { return day_sum[d] / day_weight[d]; }
    /// Once the hand of its day is taken out.
    [[nodiscard]] double of(const WaterSeen& seen, std::size_t i) const {
        return left[i] - (seen.day ? day(*seen.day) : 0);
    }
};

/// Whether the bend of the sums goes into the matrix: Newton's step, or Gauss and Newton's.
enum class Bend { heeded, left_out };

/// The matrix (below its diagonal alone) and the slope downhill, of which the step is made.
struct Linearised {
    Matrix matrix;
    Vector downhill;

    void add_square(const LinearForm& slope, double weight) {
        for (std::size_t a = 0; a < slope.size(); ++a)
            for (std::size_t b = a; b < slope.size(); ++b)
                matrix(index(slope[b].first), index(slope[a].first)) += weight * slope[a].second * slope[b].second;
    }
};

class FitSteps {
public:
    FitSteps(const WaterProblem& problem, const std::vector<char>& heeded)
        : problem_(problem), heeded_(heeded), sums_(problem.unknowns.count) {}

    [[nodiscard]] Leftover leftover(const std::vector<double>& at) {
        const double sigma = log_normal_sigma(day_spread);
        Leftover rest{std::vector<double>(problem_.seen.size()),
                      std::vector<double>(problem_.days, 1 / (sigma * sigma)), std::vector<double>(problem_.days)};
        for (const double z : at) rest.objective += z * z;
        for (std::size_t i = 0; i < problem_.seen.size(); ++i) {
            if (!heeded_[i]) continue;
            const WaterSeen& seen = problem_.seen[i];
            const double left = seen.log_seen - shares_of(problem_.unknowns, seen.terms, at, shares_);
            rest.left[i] = left;
            rest.objective += weight_of(seen) * left * left;
            if (!seen.day) continue;
            rest.day_weight[*seen.day] += weight_of(seen);
            rest.day_sum[*seen.day] += weight_of(seen) * left;
        }
        for (std::size_t d = 0; d < problem_.days; ++d)
            rest.objective -= rest.day_sum[d] * rest.day_sum[d] / rest.day_weight[d];
        rest.objective /= 2;
        return rest;
    }

    [[nodiscard]] Linearised linearised(const std::vector<double>& at, const Leftover& rest, Bend bend) {
        Linearised there = before(at);
        bent_.assign(problem_.unknowns.forms.size(), 0.0);
        for (std::size_t i = 0; i < problem_.seen.size();) i = add_day(there, i, at, rest, bend);
        for (std::size_t f = 0; f < bent_.size(); ++f)
            if (bent_[f] != 0) there.add_square(problem_.unknowns.forms[f], -bent_[f]);
        return there;
    }

    /// Of no observation.
    static Linearised before(const std::vector<double>& at) {
        const Eigen::Index n = index(at.size());
        return {Matrix::Identity(n, n), -Eigen::Map<const Vector>(at.data(), n)};
    }

    /// Adds an observation, and all that are of its day, which follow it; gives where the next begin.
    std::size_t add_day(Linearised& there, std::size_t first, const std::vector<double>& at, const Leftover& rest,
                        Bend bend) {
        const std::optional<std::size_t> of = problem_.seen[first].day;
        std::vector<std::pair<LinearForm, double>> slopes;
        std::size_t i = first;
        for (; i < problem_.seen.size() && problem_.seen[i].day == of && (of || i == first); ++i) {
            if (!heeded_[i]) continue;
            const WaterSeen& seen = problem_.seen[i];
            slopes.emplace_back(add_to(there, seen, rest.of(seen, i), at, bend), weight_of(seen));
        }
        if (!of || slopes.empty()) return i;
        for (const auto& [slope, weight] : slopes) sums_.add(slope, weight);
        there.add_square(sums_.take(), -1 / rest.day_weight[*of]);
        return i;
    }

private:
    /// Gives its slope.
    LinearForm add_to(Linearised& there, const WaterSeen& seen, double left, const std::vector<double>& at, Bend bend) {
        const WaterUnknowns& unknowns = problem_.unknowns;
        shares_of(unknowns, seen.terms, at, shares_);
        for (std::size_t k = 0; k < seen.terms.size(); ++k) sums_.add(unknowns.forms[seen.terms[k].form], shares_[k]);
        LinearForm slope = sums_.take();
        const double weight = weight_of(seen), pull = weight * left;
        for (const auto& [j, by] : slope) there.downhill[index(j)] += pull * by;
        if (bend == Bend::left_out) {
            there.add_square(slope, weight);
            return slope;
        }
        // The second derivative of ln sum c exp(form): the forms' squares by their shares, less the slope's.
        there.add_square(slope, weight + pull);
        for (std::size_t k = 0; k < seen.terms.size(); ++k) bent_[seen.terms[k].form] += pull * shares_[k];
        return slope;
    }

    const WaterProblem& problem_;
    const std::vector<char>& heeded_;
    FormSum sums_;
    std::vector<double> shares_;
    std::vector<double> bent_;  // what each form's square is taken by
};

/// Newton's step; where the sum bends the wrong way, Gauss and Newton's, which always leads downhill.
Vector step_from(FitSteps& steps, const std::vector<double>& at, const Leftover& rest) {
    Linearised there = steps.linearised(at, rest, Bend::heeded);
    Eigen::LLT<Matrix> cholesky(there.matrix);
    if (cholesky.info() != Eigen::Success) {
        there = steps.linearised(at, rest, Bend::left_out);
        cholesky.compute(there.matrix);
    }
    return cholesky.solve(there.downhill);
}

std::vector<double> stepped(const std::vector<double>& from, const Vector& step, double share) {
    std::vector<double> to = from;
    for (std::size_t i = 0; i < to.size(); ++i) to[i] += share * step[index(i)];
    return to;
}

/// As far along a step as leads downhill; false where none of it does.
bool go(FitSteps& steps, const Vector& step, std::vector<double>& at, Leftover& rest) {
    constexpr double same = 1 + 1e-12;
    double share = 1;
    std::vector<double> next = stepped(at, step, share);
    Leftover there = steps.leftover(next);
    for (int i = 0; i < most_halvings && !(there.objective <= rest.objective * same); ++i) {
        share /= 2;
        next = stepped(at, step, share);
        there = steps.leftover(next);
    }
    if (!(there.objective <= rest.objective * same)) return false;
    at = std::move(next);
    rest = std::move(there);
    return true;
}

WaterFit fit_of(std::vector<double> best, const Eigen::LLT<Matrix>& cholesky, const Leftover& rest) {
    const Matrix lower = cholesky.matrixL();
    WaterFit fit{std::move(best), {lower.data(), lower.data() + lower.size()}, {}, rest.day_weight};
    for (std::size_t d = 0; d < rest.day_sum.size(); ++d) fit.day.push_back(rest.day(d));
    return fit;
}

}  // namespace

WaterFit best_fit(const WaterProblem& problem, FitFrom from) {
    std::vector<double> best = std::move(from.start);
    best.resize(problem.unknowns.count, 0.0);
    FitSteps steps(problem, from.heeded);
    Leftover rest = steps.leftover(best);
    double last_length = 1;
    for (int i = 0; i < most_steps && !best.empty(); ++i) {
        const Vector step = step_from(steps, best, rest);
        if (!go(steps, step, best, rest)) break;
        const double length = step.cwiseAbs().maxCoeff();
        if (length < from.least_step || (length < rounding && length > last_length / 2)) break;
        last_length = length;
    }
    const Eigen::LLT<Matrix> cholesky(steps.linearised(best, rest, Bend::left_out).matrix);
    return fit_of(std::move(best), cholesky, rest);
}

WaterFit fit_by_a_step(const WaterProblem& problem, FitFrom from) {
    std::vector<double> at = std::move(from.start);
    at.resize(problem.unknowns.count, 0.0);
    FitSteps steps(problem, from.heeded);
    Leftover rest = steps.leftover(at);
    const Linearised there = steps.linearised(at, rest, Bend::left_out);
    const Eigen::LLT<Matrix> cholesky(there.matrix);
    go(steps, cholesky.solve(there.downhill), at, rest);
    return fit_of(std::move(at), cholesky, rest);
}

std::vector<WaterFit> fits_up_to(const WaterProblem& problem, const std::vector<char>& heeded, const WaterFit& all,
                                 const std::vector<std::size_t>& ends) {
    FitSteps steps(problem, heeded);
    const Leftover rest = steps.leftover(all.best);
    Linearised there = FitSteps::before(all.best);
    std::vector<WaterFit> fits;
    std::size_t i = 0;
    for (const std::size_t end : ends) {
        while (i < end) i = steps.add_day(there, i, all.best, rest, Bend::left_out);
        const Eigen::LLT<Matrix> cholesky(there.matrix);
        fits.push_back(fit_of(stepped(all.best, cholesky.solve(there.downhill), 1), cholesky, rest));
    }
    return fits;
}

}  // namespace baitwright
