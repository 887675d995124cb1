#include "answers/mix/first_to_measure.h"

#include <algorithm>
#include <cmath>

#include "physics/normal_quantile.h"

namespace baitwright {

namespace {

/// What one part adds to the standard deviation of the water, to first order, by what was or was not measured of it.
struct PartDoubt {
    double absorption, slump, moisture;
    [[nodiscard]] double variance() const { return absorption * absorption + slump * slump + moisture * moisture; }
    [[nodiscard]] const char* most() const {
        return absorption >= std::max(slump, moisture) ? "absorption" : slump >= moisture ? "slump" : "moisture";
    }
};

PartDoubt doubt_of_part(const DoubtfulPart& part, double h) {
    const double on_absorption = part.share * part.absorption_reach(h) * part.absorption.median,
                 on_second = part.share * DoubtfulPart::second_reach(h) * part.second.median;
    double moves = 0;  // with the moisture of a bag, what was not measured in it
    if (!is_of_the_bag(part.absorption.origin)) moves += on_absorption + part.share * part.absorption_reach(h);
    if (!is_of_the_bag(part.second.origin)) moves += on_second;
    return {std::abs(on_absorption) * part.absorption.sigma, on_second * part.second.sigma,
            part.moisture * part.sigma_moisture / (1 - part.moisture) * std::abs(moves)};
}

void add_shares(const DoubtfulPart& part, double h, MarkFactors& sums) {
    const auto add = [&](const DoubtfulMark& mark, double reach) {
        (is_of_the_bag(mark.origin)               ? sums.measured
         : mark.origin == MarkOrigin::from_memory ? sums.from_memory
                                                  : sums.other) += part.share * reach * mark.median;
    };
    add(part.absorption, part.absorption_reach(h));
    add(part.second, DoubtfulPart::second_reach(h));
}

std::optional<FirstToMeasure> first_by_own(const DoubtfulMix& mix, double h) {
    double all = 0, most = 0;
    MarkFactors sums{0, 0, 0};
    std::optional<FirstToMeasure> first;
    for (const DoubtfulPart& part : mix.parts) {
        add_shares(part, h, sums);
        const PartDoubt own = doubt_of_part(part, h);
        all += own.variance();
        if (own.variance() <= most) continue;
        most = own.variance();
        first = {part.solid, own.most(), 0.0};
    }
    if (first) first->share = most / (all + SharedDoubt(mix.hand).variance_of(sums));
    return first;
}

/// What moves the water, to first order: by the normals of what was learnt, and by some of its own.
struct MarkMoves {
    std::vector<double> learnt;
    double own_variance = 0;

    void add(double weight, const std::vector<double>& by) {
        learnt.resize(std::max(learnt.size(), by.size()));
        for (std::size_t k = 0; k < by.size(); ++k) learnt[k] += weight * by[k];
    }
    /// With something whose own movement is all in this.
    [[nodiscard]] double covariance(const MarkMoves& part) const {
        double sum = part.own_variance;
        for (std::size_t k = 0; k < std::min(learnt.size(), part.learnt.size()); ++k) sum += learnt[k] * part.learnt[k];
        return sum;
    }
    /// What would be taken away of its variance if that were known.
    [[nodiscard]] double taken_by(const MarkMoves& part) const {
        const double variance = part.covariance(part), both = covariance(part);
        return variance > 0 ? both * both / variance : 0;
    }
};

/// One part by its marks and its moisture.
struct PartMovement {
    MarkMoves absorption, second, moisture, all;
    double wants;  // of what the day's hand moves

    PartMovement(const DoubtfulPart& part, double h) {
        const double on_absorption = part.share * part.absorption_reach(h) * part.absorption.median,
                     on_second = part.share * DoubtfulPart::second_reach(h) * part.second.median;
        const PartDoubt own = doubt_of_part(part, h);
        absorption.add(on_absorption, part.absorption.learnt);
        absorption.own_variance = own.absorption * own.absorption;
        second.add(on_second, part.second.learnt);
        second.own_variance = own.slump * own.slump;
        moisture.own_variance = own.moisture * own.moisture;
        all.add(on_absorption, part.absorption.learnt);
        all.add(on_second, part.second.learnt);
        all.own_variance = own.variance();
        wants = on_absorption + on_second;
    }
    [[nodiscard]] const char* most(const MarkMoves& water) const {
        const double by_absorption = water.taken_by(absorption), by_second = water.taken_by(second),
                     by_moisture = water.taken_by(moisture);
        return by_absorption >= std::max(by_second, by_moisture) ? "absorption"
               : by_second >= by_moisture                        ? "slump"
                                                                 : "moisture";
    }
};

std::optional<FirstToMeasure> first_by_learnt(const DoubtfulMix& mix, double h) {
    std::vector<PartMovement> parts;
    MarkMoves water;
    double wants = 0;
    for (const DoubtfulPart& part : mix.parts) {
        const PartMovement& one = parts.emplace_back(part, h);
        water.add(1, one.all.learnt);
        water.own_variance += one.all.own_variance;
        wants += one.wants;
    }
    std::optional<FirstToMeasure> first;
    const double day = log_normal_sigma(day_spread) * wants, all = water.covariance(water) + day * day;
    double most = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const double taken = water.taken_by(parts[i].all);
        if (taken <= most) continue;
        most = taken;
        first = {mix.parts[i].solid, parts[i].most(water), taken / all};
    }
    return first;
}

}  // namespace

std::optional<FirstToMeasure> first_to_measure(const DoubtfulMix& mix, Ratio wetness) {
    return mix.learnt_normals ? first_by_learnt(mix, wetness) : first_by_own(mix, wetness);
}

}  // namespace baitwright
