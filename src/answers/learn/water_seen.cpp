#include "answers/learn/water_seen.h"

#include <cmath>

namespace baitwright {

double shares_of(const WaterUnknowns& unknowns, const std::vector<WaterSeen::Term>& terms,
                 const std::vector<double>& at, std::vector<double>& shares) {
    shares.clear();
    double sum = 0;
    for (const WaterSeen::Term& term : terms) {
        shares.push_back(term.weight * std::exp(value_of(unknowns.forms[term.form], at)));
        sum += shares.back();
    }
    for (double& share : shares) share /= sum;
    return std::log(sum);
}

namespace {

SumSlope slope_in(FormSum& sums, std::vector<double>& shares, const WaterUnknowns& unknowns,
                  const std::vector<WaterSeen::Term>& terms, const std::vector<double>& at) {
    const double value = shares_of(unknowns, terms, at, shares);
    for (std::size_t k = 0; k < terms.size(); ++k) sums.add(unknowns.forms[terms[k].form], shares[k]);
    return {value, sums.take()};
}

}  // namespace

SumSlope slope_of(const WaterUnknowns& unknowns, const std::vector<WaterSeen::Term>& terms,
                  const std::vector<double>& at) {
    std::vector<double> shares;
    FormSum sums(unknowns.count);
    return slope_in(sums, shares, unknowns, terms, at);
}

std::vector<SumSlope> slopes_of(const WaterProblem& problem, const std::vector<double>& at) {
    std::vector<double> shares;
    FormSum sums(problem.unknowns.count);
    std::vector<SumSlope> slopes;
    slopes.reserve(problem.seen.size());
    for (const WaterSeen& seen : problem.seen)
        slopes.push_back(slope_in(sums, shares, problem.unknowns, seen.terms, at));
    return slopes;
}

}  // namespace baitwright
