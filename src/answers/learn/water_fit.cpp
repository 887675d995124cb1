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

constexpr int most_steps = 400, most_halvings = 30;

Eigen::Index index(std::size_t i) {
    return static_cast<Eigen::Index>(i);
}

/// Sums of forms, term by term, without a column for every unknown.
class SparseSum {
public:
    explicit SparseSum(std::size_t count) : at_(count, 0.0), used_(count, 0) {}

    void add(const LinearForm& form, double factor) {
        for (const auto& [i, coefficient] : form) {
            if (!used_[i]) touched_.push_back(i);
            used_[i] = 1;
            at_[i] += factor * coefficient;
        }
    }

    LinearForm take() {
        std::sort(touched_.begin(), touched_.end());
        LinearForm form;
        form.reserve(touched_.size());
        for (const std::size_t i : touched_) {
            form.emplace_back(i, at_[i]);
            at_[i] = 0;
            used_[i] = 0;
        }
        touched_.clear();
        return form;
    }

private:
    std::vector<double> at_;
    std::vector<char> used_;
    std::vector<std::size_t> touched_;
};

/// ln of the sum, and into `slope`, where there is one, its slope.
double log_sum(const WaterUnknowns& unknowns, const std::vector<WaterSeen::Term>& terms, const std::vector<double>& at,
               SparseSum* slope) {
    double sum = 0;
    std::vector<double> each(terms.size());
    for (std::size_t k = 0; k < terms.size(); ++k)
        sum += each[k] = terms[k].weight * std::exp(value_of(unknowns.forms[terms[k].form], at));
    if (slope)
        for (std::size_t k = 0; k < terms.size(); ++k) slope->add(unknowns.forms[terms[k].form], each[k] / sum);
    return std::log(sum);
}

double prior_day_weight() {
    const double sigma = log_normal_sigma(day_spread);
    return 1 / (sigma * sigma);
}

/// What is left of each observation, and the sum that is to be the least: half of z'z and of the weighted squares.
struct Leftover {
    std::vector<double> left, day_weight, day_sum;
    double objective = 0;

    [[nodiscard]] double day(std::size_t d) const { return day_sum[d] / day_weight[d]; }
};

class FitSteps {
public:
    FitSteps(const WaterProblem& problem, const std::vector<char>& heeded)
        : problem_(problem), heeded_(heeded), sums_(problem.unknowns.count) {}

    [[nodiscard]] Leftover leftover(const std::vector<double>& at) const {
        Leftover rest{std::vector<double>(problem_.seen.size()), std::vector<double>(problem_.days, prior_day_weight()),
                      std::vector<double>(problem_.days)};
        for (const double z : at) rest.objective += z * z;
        for (std::size_t i = 0; i < problem_.seen.size(); ++i) {
            if (!heeded_[i]) continue;
            const WaterSeen& seen = problem_.seen[i];
            const double left = seen.log_seen - log_sum(problem_.unknowns, seen.terms, at, nullptr);
            const double weight = 1 / (seen.sigma * seen.sigma);
            rest.left[i] = left;
            rest.objective += weight * left * left;
            if (!seen.day) continue;
            rest.day_weight[*seen.day] += weight;
            rest.day_sum[*seen.day] += weight * left;
        }
        for (std::size_t d = 0; d < problem_.days; ++d)
            rest.objective -= rest.day_sum[d] * rest.day_sum[d] / rest.day_weight[d];
        rest.objective /= 2;
        return rest;
    }

    /// Information and downhill slope there.
    void linearise(const std::vector<double>& at, const Leftover& rest, Matrix& information, Vector& downhill) {
        const Eigen::Index n = index(at.size());
        information.setIdentity(n, n);
        downhill = -Eigen::Map<const Vector>(at.data(), n);
        std::vector<SparseSum> of_day;
        days_.assign(problem_.days, {});
        for (std::size_t i = 0; i < problem_.seen.size(); ++i) {
            if (!heeded_[i]) continue;
            const WaterSeen& seen = problem_.seen[i];
            const double weight = 1 / (seen.sigma * seen.sigma);
            log_sum(problem_.unknowns, seen.terms, at, &sums_);
            LinearForm slope = sums_.take();
            add_square(slope, weight, information);
            const double left = rest.left[i] - (seen.day ? rest.day(*seen.day) : 0);
            for (const auto& [j, by] : slope) downhill[index(j)] += weight * left * by;
            if (seen.day) days_[*seen.day].emplace_back(std::move(slope), weight);
        }
        for (std::size_t d = 0; d < problem_.days; ++d) {
            for (const auto& [slope, weight] : days_[d]) sums_.add(slope, weight);
            add_square(sums_.take(), -1 / rest.day_weight[d], information);
        }
    }

private:
    /// Below the diagonal alone.
    static void add_square(const LinearForm& slope, double weight, Matrix& information) {
        for (std::size_t a = 0; a < slope.size(); ++a)
            for (std::size_t b = a; b < slope.size(); ++b)
                information(index(slope[b].first), index(slope[a].first)) += weight * slope[a].second * slope[b].second;
    }

    const WaterProblem& problem_;
    const std::vector<char>& heeded_;
    SparseSum sums_;
    std::vector<std::vector<std::pair<LinearForm, double>>> days_;
};

std::vector<double> stepped(const std::vector<double>& from, const Vector& step, double share) {
    std::vector<double> to = from;
    for (std::size_t i = 0; i < to.size(); ++i) to[i] += share * step[index(i)];
    return to;
}

}  // namespace

double value_of(const LinearForm& form, const std::vector<double>& at) {
    double sum = 0;
    for (const auto& [i, coefficient] : form) sum += coefficient * at[i];
    return sum;
}

SumSlope slope_of(const WaterUnknowns& unknowns, const std::vector<WaterSeen::Term>& terms,
                  const std::vector<double>& at) {
    SparseSum sums(unknowns.count);
    const double value = log_sum(unknowns, terms, at, &sums);
    return {value, sums.take()};
}

WaterFit best_fit(const WaterProblem& problem, FitFrom from) {
    std::vector<double> at = std::move(from.start);
    at.resize(problem.unknowns.count, 0.0);
    FitSteps steps(problem, from.heeded);
    Leftover rest = steps.leftover(at);
    Matrix information;
    Vector downhill;
    Eigen::LLT<Matrix> cholesky;
    for (int i = 0;; ++i) {
        steps.linearise(at, rest, information, downhill);
        cholesky.compute(information);
        if (i == most_steps) break;
        const Vector step = cholesky.solve(downhill);
        if (step.size() == 0 || step.cwiseAbs().maxCoeff() < from.least_step) break;
        double share = 1;
        std::vector<double> next = stepped(at, step, share);
        Leftover there = steps.leftover(next);
        for (int h = 0; h < most_halvings && there.objective > rest.objective * (1 + 1e-12); ++h) {
            share /= 2;
            next = stepped(at, step, share);
            there = steps.leftover(next);
        }
        at = std::move(next);
        rest = std::move(there);
    }
    const Matrix lower = cholesky.matrixL();
    WaterFit fit{at, std::vector<double>(lower.data(), lower.data() + lower.size()), {}, rest.day_weight};
    for (std::size_t d = 0; d < problem.days; ++d) fit.day.push_back(rest.day(d));
    return fit;
}

WaterCovariance::WaterCovariance(const WaterFit& fit) : count_(fit.best.size()), all_(count_ * count_) {
    const Eigen::Index n = index(count_);
    const Eigen::Map<const Matrix> lower(fit.lower.data(), n, n);
    Matrix inverse = lower.triangularView<Eigen::Lower>().solve(Matrix::Identity(n, n));
    Eigen::Map<Matrix>(all_.data(), n, n).noalias() = inverse.transpose().triangularView<Eigen::Upper>() * inverse;
}

double WaterCovariance::of(const LinearForm& a, const LinearForm& b) const {
    double sum = 0;
    for (const auto& [i, of_a] : a)
        for (const auto& [j, of_b] : b) sum += of_a * of_b * all_[i * count_ + j];
    return sum;
}

std::vector<double> WaterCovariance::with(const LinearForm& form) const {
    std::vector<double> sums(count_);
    for (const auto& [i, coefficient] : form)
        for (std::size_t j = 0; j < count_; ++j) sums[j] += coefficient * all_[i * count_ + j];
    return sums;
}

LinearForm sum_of(const LinearForm& a, const LinearForm& b, double factor) {
    LinearForm sum;
    sum.reserve(a.size() + b.size());
    auto x = a.begin();
    auto y = b.begin();
    while (x != a.end() || y != b.end()) {
        if (y == b.end() || (x != a.end() && x->first < y->first)) {
            sum.push_back(*x++);
        } else if (x == a.end() || y->first < x->first) {
            sum.emplace_back(y->first, factor * y->second);
            ++y;
        } else {
            sum.emplace_back(x->first, x->second + factor * y->second);
            ++x, ++y;
        }
    }
    return sum;
}

std::vector<double> factor_rows(const WaterFit& fit, const std::vector<const LinearForm*>& forms) {
    const Eigen::Index n = index(fit.best.size()), rows = index(forms.size());
    Matrix columns = Matrix::Zero(n, rows);
    for (std::size_t r = 0; r < forms.size(); ++r)
        for (const auto& [i, coefficient] : *forms[r]) columns(index(i), index(r)) += coefficient;
    const Eigen::Map<const Matrix> lower(fit.lower.data(), n, n);
    lower.triangularView<Eigen::Lower>().solveInPlace(columns);
    return {columns.data(), columns.data() + columns.size()};
}

}  // namespace baitwright
