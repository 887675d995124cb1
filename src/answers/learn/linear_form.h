#pragma once

#include <cstddef>
#include <utility>
#include <vector>

namespace baitwright {

/// sum coefficient x unknown; each unknown once, rising.
using LinearForm = std::vector<std::pair<std::size_t, double>>;

double value_of(const LinearForm& form, const std::vector<double>& at);

/// Its variance where the unknowns are standard normal and independent.
double variance_before(const LinearForm& form);

/// a + factor x b
LinearForm sum_of(const LinearForm& a, const LinearForm& b, double factor);

/// Sums up many forms.
class FormSum {
public:
    explicit FormSum(std::size_t unknowns) : at_(unknowns, 0.0), used_(unknowns, 0) {}

    void add(const LinearForm& form, double factor);
    /// What was added since the last time.
    LinearForm take();

private:
    std::vector<double> at_;
    std::vector<char> used_;
    std::vector<std::size_t> touched_;
};

}  // namespace baitwright
