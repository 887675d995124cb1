#include "answers/water_range.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "physics/moisture.h"
#include "physics/normal_quantile.h"
#include "physics/quasi_random.h"

namespace baitwright {

namespace {

constexpr double wettest_bag = 0.9;

/// What a draw of everything but the hand wants: U H + V.
struct Draw {
    double by_hand, fixed;
};

/// Shares of a wetness: min(h, 1) of A and max(h - 1, 0) of G.
struct Reach {
    double absorption, gap;
    explicit Reach(double wetness) : absorption(std::min(wetness, 1.0)), gap(std::max(wetness - 1, 0.0)) {}
};

double bag_moisture(const DoubtfulPart& part, double on_moisture) {
    return std::min(wettest_bag, part.moisture * on_moisture);
}

std::vector<Draw> draws_of(const std::vector<DoubtfulPart>& parts, double wetness, std::size_t count,
                           std::uint64_t seed) {
    QuasiRandomNormals normals(3 * parts.size(), seed);
    std::vector<double> z(normals.coordinates());
    std::vector<Draw> draws(count);
    const Reach reach(wetness);
    for (Draw& draw : draws) {
        normals.next(z);
        draw = {0, 0};
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const DoubtfulPart& part = parts[i];
            double wanted = reach.absorption * part.absorption * std::exp(part.sigma_absorption * z[3 * i]);
            if (reach.gap > 0) wanted += reach.gap * part.gap * std::exp(part.sigma_gap * z[3 * i + 1]);
            const double bag = bag_moisture(part, std::exp(part.sigma_moisture * z[3 * i + 2]));
            const double drier = (1 - bag) / (1 - part.moisture);
            draw.by_hand += part.share * wanted * drier;
            draw.fixed += part.share * reach.absorption * (part.moisture * drier - bag);
        }
    }
    return draws;
}

/// The log-normal of the same mean and variance, as a place to start from.
struct Fit {
    double mean_log, sigma;
    [[nodiscard]] double quantile(double normal) const { return std::exp(mean_log + sigma * normal); }
    [[nodiscard]] double density(double normal) const {
        return std::exp(-normal * normal / 2) / (quantile(normal) * sigma * std::sqrt(2 * std::numbers::pi));
    }
};

Fit fit_of(const std::vector<Draw>& draws, double hand_sigma) {
    const double first = std::exp(hand_sigma * hand_sigma / 2), second = std::exp(2 * hand_sigma * hand_sigma);
    double mean = 0, square = 0;
    for (const Draw& draw : draws) {
        mean += draw.by_hand * first + draw.fixed;
        square += draw.by_hand * draw.by_hand * second + 2 * draw.by_hand * draw.fixed * first + draw.fixed * draw.fixed;
    }
    const auto count = static_cast<double>(draws.size());
    mean = std::max(mean / count, 1e-9);
    const double variance = std::max(square / count - mean * mean, 1e-18);
    const double sigma = std::sqrt(std::log1p(variance / (mean * mean)));
    return {std::log(mean) - sigma * sigma / 2, sigma};
}

/// P(wanted <= q), the hand integrated.
double probability_below(const std::vector<Draw>& draws, double hand_sigma, double q) {
    const double scale = -1 / (hand_sigma * std::numbers::sqrt2);
    double sum = 0;
    for (const Draw& draw : draws) {
        const double hand = (q - draw.fixed) / draw.by_hand;
        if (hand > 0) sum += std::erfc(scale * std::log(hand));
    }
    return 0.5 * sum / static_cast<double>(draws.size());
}

double quantile_of(const std::vector<Draw>& draws, const Fit& fit, double hand_sigma, double p) {
    const double normal = normal_quantile(p), slope = fit.density(normal);
    double q = fit.quantile(normal);
    constexpr int steps = 2;  // each leaves about a tenth of the error, which begins at a percent
    for (int i = 0; i < steps; ++i) q += (p - probability_below(draws, hand_sigma, q)) / slope;
    return q;
}

}  // namespace

std::vector<DoubtfulPart> doubtful_parts(const ResolvedMix& mix) {
    std::vector<DoubtfulPart> parts;
    for (std::size_t i = 0; i < mix.solids.size(); ++i) {
        const SolidPart& part = mix.solids[i];
        const Ingredient& in = part.ingredient;
        if (!takes_water(in.kind) || part.prepare == Preparation::soaked) continue;
        parts.push_back({i, part.share, in.absorption.value, in.slump.value - in.absorption.value, in.moisture.value,
                         log_normal_sigma(in.absorption.spread), log_normal_sigma(in.slump.spread),
                         log_normal_sigma(in.moisture.spread)});
    }
    return parts;
}

WaterMarks marks_of_draw(const DoubtfulPart& part, double on_absorption, double on_gap, double on_moisture) {
    const double bag = bag_moisture(part, on_moisture);
    const Ratio absorption = added_water_at_moisture(part.absorption * on_absorption, part.moisture, bag);
    return {absorption, absorption + part.gap * on_gap * (1 - bag) / (1 - part.moisture)};
}

Range<Ratio> wanted_water_range(const std::vector<DoubtfulPart>& parts, Ratio wetness, std::size_t count,
                                std::uint64_t seed) {
    const std::vector<Draw> draws = draws_of(parts, wetness, count, seed);
    const double hand_sigma = log_normal_sigma(hand_spread);
    const Fit fit = fit_of(draws, hand_sigma);
    const auto point = [&](double p) { return quantile_of(draws, fit, hand_sigma, p); };
    return {point(0.05), point(0.5), point(0.95)};
}

}  // namespace baitwright
