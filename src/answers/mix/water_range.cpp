#include "answers/mix/water_range.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "physics/moisture.h"
#include "physics/normal_quantile.h"
#include "physics/quasi_random.h"
#include "physics/small_exponentials.h"

namespace baitwright {

namespace {

constexpr double wettest_bag = 0.9;

/// What a draw of everything but the hand wants: U H + V.
struct Draw {
    double by_hand, fixed, log_by_hand;
};

/// A part as the draws need it, all that does not change multiplied out.
struct Weights {
    double absorption, gap;  ///< share x reach x median / (1 - M0)
    double moisture;         ///< M0
    double fixed, by_bag;    ///< V = sum (fixed - by_bag x M1)
};

std::vector<Weights> weights_of(const std::vector<DoubtfulPart>& parts, double wetness) {
    const double of_absorption = std::min(wetness, 1.0), of_gap = std::max(wetness - 1, 0.0);
    std::vector<Weights> weights;
    for (const DoubtfulPart& part : parts) {
        const double per_dry_matter = part.share / (1 - part.moisture);
        weights.push_back({per_dry_matter * of_absorption * part.absorption, per_dry_matter * of_gap * part.gap,
                           part.moisture, per_dry_matter * of_absorption * part.moisture,
                           per_dry_matter * of_absorption});
    }
    return weights;
}

Draw draw_of(const std::vector<Weights>& weights, const double* factors) {
    Draw draw{0, 0, 0};
    for (std::size_t i = 0; i < weights.size(); ++i) {
        const Weights& w = weights[i];
        const double bag = std::min(std::max(wettest_bag, w.moisture), w.moisture * factors[3 * i + 2]);
        draw.by_hand += (w.absorption * factors[3 * i] + w.gap * factors[3 * i + 1]) * (1 - bag);
        draw.fixed += w.fixed - w.by_bag * bag;
    }
    draw.log_by_hand = std::log(draw.by_hand);
    return draw;
}

std::vector<Draw> draws_of(const std::vector<DoubtfulPart>& parts, double wetness, std::size_t count,
                           std::uint64_t seed) {
    QuasiRandomNormals normals(3 * parts.size(), seed);
    constexpr std::size_t rows = 8;  // drawn together, so that the exponentials come in long runs
    const std::size_t width = normals.coordinates();
    std::vector<double> sigma, z(rows * width), factors(rows * width);
    for (std::size_t row = 0; row < rows; ++row)
        for (const DoubtfulPart& part : parts)
            sigma.insert(sigma.end(), {part.sigma_absorption, part.sigma_gap, part.sigma_moisture});
    const std::vector<Weights> weights = weights_of(parts, wetness);
    std::vector<Draw> draws(count);
    for (std::size_t first = 0; first < count; first += rows) {
        for (std::size_t row = 0; row < rows; ++row) normals.next({&z[row * width], width});
        exponentials(sigma, z, factors);
        for (std::size_t row = 0; row < std::min(rows, count - first); ++row)
            draws[first + row] = draw_of(weights, &factors[row * width]);
    }
    return draws;
}

/// The log-normal of the same mean and variance, as a place to start from.
struct Fit {
    double mean_log, sigma;
    [[nodiscard]] double quantile(double normal) const { return std::exp(mean_log + sigma * normal); }
};

Fit fit_of(const std::vector<Draw>& draws, double hand_sigma) {
    const double first = std::exp(hand_sigma * hand_sigma / 2), second = std::exp(2 * hand_sigma * hand_sigma);
    double mean = 0, square = 0;
    for (const Draw& draw : draws) {
        mean += draw.by_hand * first + draw.fixed;
        square +=
            draw.by_hand * draw.by_hand * second + 2 * draw.by_hand * draw.fixed * first + draw.fixed * draw.fixed;
    }
    const auto count = static_cast<double>(draws.size());
    mean = std::max(mean / count, 1e-9);
    const double variance = std::max(square / count - mean * mean, 1e-18);
    const double sigma = std::sqrt(std::log1p(variance / (mean * mean)));
    return {std::log(mean) - sigma * sigma / 2, sigma};
}

/// The standard normal's probability beyond |x| and its density at x. erfc of the library takes three times as long.
/// **Source**: Abramowitz & Stegun 1964, 26.2.17, within 7.5e-8 (from memory; compared with erfc in the tests).
struct Tail {
    double beyond, density;
};

Tail normal_tail(double x) {
    const double size = std::abs(x);
    const double density = std::exp(-x * x / 2) * (std::numbers::inv_sqrtpi / std::numbers::sqrt2);
    const double t = 1 / (1 + 0.2316419 * size);
    const double series =
        t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
    return {density * series, density};
}

/// log(1 - r); for the small r of most draws by its series, 2e-6 at the most.
double log_of_rest(double r) {
    return std::abs(r) < 0.1 ? -r * (1 + r * (1.0 / 2 + r * (1.0 / 3 + r / 4))) : std::log1p(-r);
}

/// P(wanted <= q) and, near enough for a step of Newton's, its slope in q; the hand integrated.
struct Below {
    double probability, slope;
};

Below below(const std::vector<Draw>& draws, double hand_sigma, double q) {
    const double scale = 1 / hand_sigma, log_q = std::log(q);
    double sum = 0, slope = 0;
    for (const Draw& draw : draws) {
        const double ratio = draw.fixed / q;
        if (!(ratio < 1)) continue;
        const double x = scale * (log_q + log_of_rest(ratio) - draw.log_by_hand);
        const Tail tail = normal_tail(x);
        sum += x > 0 ? 1 - tail.beyond : tail.beyond;
        slope += tail.density;
    }
    const auto count = static_cast<double>(draws.size());
    return {sum / count, slope * scale / (q * count)};
}

/// One step of Newton's from the log-normal fit, which is right to a few thousandths: what is left is under 1e-4.
double quantile_of(const std::vector<Draw>& draws, const Fit& fit, double hand_sigma, double p) {
    const double start = fit.quantile(normal_quantile(p));
    const Below at_start = below(draws, hand_sigma, start);
    return at_start.slope > 0 ? start + (p - at_start.probability) / at_start.slope : start;
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
    const double bag = std::min(std::max(wettest_bag, part.moisture), part.moisture * on_moisture);
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
