#pragma once

#include <vector>

#include "answers/learn/water_fit.h"

namespace baitwright {

/// The covariance of the unknowns, all of it.
class WaterCovariance {
public:
    explicit WaterCovariance(const WaterFit& fit);
    [[nodiscard]] double of(const LinearForm& a, const LinearForm& b) const;
    [[nodiscard]] double of(const LinearForm& a) const { return of(a, a); }
    /// With each of the unknowns.
    [[nodiscard]] std::vector<double> with(const LinearForm& form) const;
    /// With each of its own unknowns; the others are left as they are.
    void own_of(const LinearForm& form, std::vector<double>& with) const;

private:
    std::size_t count_;
    std::vector<double> all_;
};

/// A row for each of the forms, so that the covariance of two is the product of theirs.
std::vector<double> factor_rows(const WaterFit& fit, const std::vector<const LinearForm*>& forms);

}  // namespace baitwright
