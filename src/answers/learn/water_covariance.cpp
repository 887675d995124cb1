#include "answers/learn/water_covariance.h"

#include <Eigen/Cholesky>

namespace baitwright {

namespace {

using CovarianceMatrix = Eigen::MatrixXd;

Eigen::Index index_of(std::size_t i) {
    return static_cast<Eigen::Index>(i);
}

}  // namespace

WaterCovariance::WaterCovariance(const WaterFit& fit) : count_(fit.best.size()), all_(count_ * count_) {
    if (count_ == 0) return;  // nothing was mixed of which anything is unknown
    const Eigen::Index n = index_of(count_);
    const Eigen::Map<const CovarianceMatrix> lower(fit.lower.data(), n, n);
    CovarianceMatrix inverse = lower.triangularView<Eigen::Lower>().solve(CovarianceMatrix::Identity(n, n));
    Eigen::Map<CovarianceMatrix>(all_.data(), n, n).noalias() =
        inverse.transpose().triangularView<Eigen::Upper>() * inverse;
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

void WaterCovariance::own_of(const LinearForm& form, std::vector<double>& with) const {
    for (const auto& [j, of_own] : form) with[j] = 0;
    for (const auto& [i, coefficient] : form)
        for (const auto& [j, of_own] : form) with[j] += coefficient * all_[i * count_ + j];
}

std::vector<double> factor_rows(const WaterFit& fit, const std::vector<const LinearForm*>& forms) {
    if (fit.best.empty()) return {};
    const Eigen::Index n = index_of(fit.best.size()), rows = index_of(forms.size());
    CovarianceMatrix columns = CovarianceMatrix::Zero(n, rows);
    for (std::size_t r = 0; r < forms.size(); ++r)
        for (const auto& [i, coefficient] : *forms[r]) columns(index_of(i), index_of(r)) += coefficient;
    const Eigen::Map<const CovarianceMatrix> lower(fit.lower.data(), n, n);
    lower.triangularView<Eigen::Lower>().solveInPlace(columns);
    return {columns.data(), columns.data() + columns.size()};
}

}  // namespace baitwright
