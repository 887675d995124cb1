#include "answers/blend/weighed_blend.h"

#include <algorithm>
#include <cmath>

#include "answers/blend/share_batch.h"
#include "quantities/sort_stably.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using End = BlendLimitEnd::End;

constexpr int most_grams_tried = 5000;

/// By how much masses miss a limit, in the unit of its bound; 0 where they meet it.
double missed_by(const PlacedLimit& placed, const BlendProgramme& blend, const std::vector<double>& grams) {
    double over = 0, weight = 0;
    if (placed.place == PlacedLimit::Place::column) {
        for (const double each : grams) weight += each;
        over = grams[placed.at] - placed.limit.bound * weight;
    } else {
        for (std::size_t i = 0; i < grams.size(); ++i) {
            weight += placed.weights[i] * grams[i];
            for (const LinearEntry& entry : blend.programme.columns[i].entries)
                if (entry.row == placed.at) over += entry.coefficient * grams[i];
        }
    }
    if (!(weight > 0)) return 0;
    return std::max(0.0, (placed.limit.end == End::least ? -over : over) / weight);
}

/// Within a step that a person would take. But those on the price: what a gram too much costs breaks nobody's blend.
bool meets_limits(const BlendProgramme& blend, const std::vector<double>& grams) {
    return std::all_of(blend.limits.begin(), blend.limits.end(), [&](const PlacedLimit& placed) {
        return placed.limit.property == MixProperty::price ||
               missed_by(placed, blend, grams) <= (1 + 1e-9) * step_of(placed.limit);
    });
}

}  // namespace

double step_of(const BlendLimitEnd& limit) {
    return limit.property ? facts_of(*limit.property).step : 0.01;
}

std::vector<double> shares_kept(const LinearSolution& solution, Mass batch) {
    const double least_share = std::max<double>(0.5 / saved_parts, 0.5 * gram / batch);
    double sum = 0, kept = 0;
    for (const double value : solution.values) sum += value;
    std::vector<double> shares(solution.values.size(), 0);
    for (std::size_t i = 0; i < shares.size(); ++i)
        if (solution.values[i] >= least_share * sum) kept += shares[i] = solution.values[i];
    if (kept > 0)
        for (double& share : shares) share /= kept;
    return shares;
}

std::optional<std::vector<Mass>> weighed_blend(const BlendProgramme& blend, const LinearSolution& solution,
                                               Mass batch) {
    const std::vector<double> shares = shares_kept(solution, batch);
    std::vector<std::size_t> in;
    for (std::size_t i = 0; i < shares.size(); ++i)
        if (shares[i] > 0) in.push_back(i);
    if (in.empty()) return std::nullopt;
    sort_stably(in.begin(), in.end(), [&](std::size_t a, std::size_t b) { return shares[a] > shares[b]; });
    std::vector<double> parts;
    parts.reserve(in.size());
    for (const std::size_t i : in) parts.push_back(shares[i]);
    for (const std::vector<Mass>& masses : {shared_out(batch, parts), shared_to_the_gram(batch, parts)}) {
        std::vector<Mass> of_candidates(shares.size());
        std::vector<double> grams(shares.size(), 0);
        for (std::size_t k = 0; k < in.size(); ++k) {
            of_candidates[in[k]] = masses[k];
            grams[in[k]] = masses[k].in(gram);
        }
        if (meets_limits(blend, grams)) return of_candidates;
    }
    return std::nullopt;
}

std::optional<Mass> batch_to_weigh(const BlendProgramme& blend, const LinearSolution& solution, Mass above) {
    for (int grams = static_cast<int>(std::floor(above.in(gram) + 1e-9)) + 1; grams <= most_grams_tried; ++grams)
        if (weighed_blend(blend, solution, grams * gram)) return grams * gram;
    return std::nullopt;
}

}  // namespace baitwright
