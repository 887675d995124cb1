#include "answers/mix/water_range.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

#include "answers/mix/asked_before.h"
#include "physics/normal_quantile.h"
#include "physics/quasi_random.h"
#include "physics/small_exponentials.h"

namespace baitwright {

namespace {

/// What a draw of everything but the shared factor wants: U H + V.
struct Draw {
    double by_shared, fixed, log_by_shared;
};

using SharedFactors = std::array<double, 4>;  // by the origin of the mark

/// A mark as the draws need it: share x reach x median, of a bag measured or by the dry matter of a drawn one.
struct MarkWeight {
    double as_measured = 0, by_dry_matter = 0;
    MarkOrigin origin = MarkOrigin::measured;

    [[nodiscard]] double in_draw(double factor, const SharedFactors& shared, double dry_matter) const {
        return factor * shared[static_cast<std::size_t>(origin)] * (as_measured + by_dry_matter * dry_matter);
    }
};

/// A part as the draws need it, all that does not change multiplied out.
struct Weights {
    MarkWeight absorption, second;
    double moisture;               ///< M0
    double fixed = 0, by_bag = 0;  ///< V = sum (fixed - by_bag x M1)
};

MarkWeight weight_of(const DoubtfulMark& mark, double share_and_reach, double moisture) {
    const double weight = share_and_reach * mark.median;
    if (is_of_the_bag(mark.origin)) return {weight, 0, mark.origin};
    return {0, weight / (1 - moisture), mark.origin};
}

std::vector<Weights> weights_of(const std::vector<DoubtfulPart>& parts, double wetness) {
    std::vector<Weights> weights;
    for (const DoubtfulPart& part : parts) {
        const double on_absorption = part.share * part.absorption_reach(wetness);
        Weights one{weight_of(part.absorption, on_absorption, part.moisture),
                    weight_of(part.second, part.share * DoubtfulPart::second_reach(wetness), part.moisture),
                    part.moisture};
        if (!is_of_the_bag(part.absorption.origin)) {
            one.by_bag = on_absorption / (1 - part.moisture);
            one.fixed = one.by_bag * part.moisture;
        }
        weights.push_back(one);
    }
    return weights;
}

Draw draw_of(const std::vector<Weights>& weights, const double* factors, const MarkFactors& beside) {
    const SharedFactors shared{beside.of(MarkOrigin::measured), beside.of(MarkOrigin::from_memory),
                               beside.of(MarkOrigin::other), beside.of(MarkOrigin::learnt)};
    Draw draw{0, 0, 0};
    for (std::size_t i = 0; i < weights.size(); ++i) {
        const Weights& w = weights[i];
        const double bag = drawn_bag(w.moisture, factors[3 * i + 2]);
        draw.by_shared += w.absorption.in_draw(factors[3 * i], shared, 1 - bag) +
                          w.second.in_draw(factors[3 * i + 1], shared, 1 - bag);
        draw.fixed += w.fixed - w.by_bag * bag;
    }
    draw.log_by_shared = std::log(draw.by_shared);
    return draw;
}

/// The sigmas of so many rows of normals; those that the marks share have none, for they are taken as they are.
std::vector<double> sigmas_of(const std::vector<DoubtfulPart>& parts, std::size_t shared, std::size_t rows) {
    std::vector<double> sigmas;
    for (std::size_t row = 0; row < rows; ++row) {
        sigmas.insert(sigmas.end(), shared, 0.0);
        for (const DoubtfulPart& part : parts)
            sigmas.insert(sigmas.end(), {part.absorption.sigma, part.second.sigma, part.sigma_moisture});
    }
    return sigmas;
}

std::vector<Draw> draws_of(const std::vector<DoubtfulPart>& parts, const SharedDoubt& doubt, double wetness,
                           std::size_t count, std::uint64_t seed) {
    const std::size_t shared = doubt.normals_beside_first();
    QuasiRandomNormals normals(shared + 3 * parts.size(), seed);
    constexpr std::size_t rows = 8;  // drawn together, so that the exponentials come in long runs
    const std::size_t width = normals.coordinates();
    const std::vector<double> sigma = sigmas_of(parts, shared, rows);
    std::vector<double> z(rows * width), factors(rows * width);
    const std::vector<Weights> weights = weights_of(parts, wetness);
    std::vector<Draw> draws(count);
    for (std::size_t first = 0; first < count; first += rows) {
        for (std::size_t row = 0; row < rows; ++row) normals.next({&z[row * width], width});
        exponentials(sigma, z, factors);
        for (std::size_t row = 0; row < std::min(rows, count - first); ++row)
            draws[first + row] = draw_of(weights, &factors[row * width] + shared, doubt.beside_first(&z[row * width]));
    }
    return draws;
}

/// Where the three normals of each part's own stand, after those of what was learnt. What was learnt all of has none:
/// its place is behind them all, where zeros stand.
struct OwnPlaces {
    std::vector<std::size_t> of_part;
    std::size_t normals;

    OwnPlaces(const std::vector<DoubtfulPart>& parts, std::size_t learnt) : normals(learnt) {
        const auto has_own = [](const DoubtfulPart& part) {
            return part.absorption.sigma > 0 || part.second.sigma > 0 || !is_of_the_bag(part.absorption.origin) ||
                   !is_of_the_bag(part.second.origin);
        };
        for (const DoubtfulPart& part : parts) {
            of_part.push_back(normals);
            if (has_own(part)) normals += 3;
        }
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (!has_own(parts[i])) of_part[i] = normals;
    }
};

/// The logarithms of what moves the parts in a draw but the day: two marks and the moisture each.
void log_factors(const std::vector<DoubtfulPart>& parts, const OwnPlaces& places, const double* normals, double* logs) {
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const double* own = normals + places.of_part[i];
        logs[3 * i] = parts[i].absorption.log_factor(normals, own[0]);
        logs[3 * i + 1] = parts[i].second.log_factor(normals, own[1]);
        logs[3 * i + 2] = parts[i].sigma_moisture * own[2];
    }
}

/// The same where something was learnt: by its normals, and those of the parts that have doubts of their own.
std::vector<Draw> learnt_draws(const DoubtfulMix& mix, double wetness, std::size_t count, std::uint64_t seed) {
    constexpr std::size_t rows = 8;
    const OwnPlaces places(mix.parts, *mix.learnt_normals);
    const std::size_t width = 3 * mix.parts.size(), drawn = std::max<std::size_t>(1, places.normals);
    QuasiRandomNormals normals(drawn, seed);
    std::vector<double> z(drawn + 3), logs(rows * width), factors(rows * width);
    const std::vector<double> as_they_are(rows * width, 1.0);
    const std::vector<Weights> weights = weights_of(mix.parts, wetness);
    std::vector<Draw> draws(count);
    for (std::size_t first = 0; first < count; first += rows) {
        for (std::size_t row = 0; row < rows; ++row) {
            normals.next({z.data(), drawn});
            log_factors(mix.parts, places, z.data(), &logs[row * width]);
        }
        exponentials(as_they_are, logs, factors);
        for (std::size_t row = 0; row < std::min(rows, count - first); ++row)
            draws[first + row] = draw_of(weights, &factors[row * width], MarkFactors{});
    }
    return draws;
}

/// The log-normal of the same mean and variance, as a place to start from.
struct Fit {
    double mean_log, sigma;
    double deviation;  ///< standard, of what is wanted
    [[nodiscard]] double quantile(double normal) const { return std::exp(mean_log + sigma * normal); }
};

Fit fit_of(const std::vector<Draw>& draws, double shared_sigma) {
    const double first = std::exp(shared_sigma * shared_sigma / 2), second = std::exp(2 * shared_sigma * shared_sigma);
    double mean = 0, square = 0;
    for (const Draw& draw : draws) {
        mean += draw.by_shared * first + draw.fixed;
        square += draw.by_shared * draw.by_shared * second + 2 * draw.by_shared * draw.fixed * first +
                  draw.fixed * draw.fixed;
    }
    const auto count = static_cast<double>(draws.size());
    mean /= count;
    const double variance = std::max(square / count - mean * mean, 1e-18);
    mean = std::max(mean, 1e-9);
    const double sigma = std::sqrt(std::log1p(variance / (mean * mean)));
    return {std::log(mean) - sigma * sigma / 2, sigma, std::sqrt(variance)};
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

/// log(1 - r) of a small r, as most draws have it, by its series; 2e-6 at the most.
double log_of_rest(double r) {
    return -r * (1 + r * (1.0 / 2 + r * (1.0 / 3 + r / 4)));
}

/// P(wanted <= q) and its slope in q, the shared factor integrated.
struct Below {
    double probability, slope;
};

Below below(const std::vector<Draw>& draws, double shared_sigma, double q) {
    const double scale = 1 / shared_sigma, log_q = q > 0 ? std::log(q) : 0;
    double sum = 0, slope = 0;
    for (const Draw& draw : draws) {
        const double rest = q - draw.fixed;
        if (!(rest > 0)) continue;
        const double log_rest = std::abs(draw.fixed) < 0.1 * q ? log_q + log_of_rest(draw.fixed / q) : std::log(rest);
        const double x = scale * (log_rest - draw.log_by_shared);
        const Tail tail = normal_tail(x);
        sum += x > 0 ? 1 - tail.beyond : tail.beyond;
        slope += tail.density / rest;
    }
    const auto count = static_cast<double>(draws.size());
    return {sum / count, slope * scale / count};
}

/// A point of what is wanted, by Newton's steps from the log-normal fit. A step of `close` standard deviations leaves
/// an error of its square or so.
class PointFinder {
public:
    PointFinder(const std::vector<Draw>& draws, const Fit& fit, double shared_sigma, double least)
        : draws_(draws), fit_(fit), shared_sigma_(shared_sigma), least_(least) {}

    [[nodiscard]] double point(double p) const {
        constexpr double close = 0.03;
        double low = least_, high = std::numeric_limits<double>::infinity();
        double q = std::max(fit_.quantile(normal_quantile(p)), least_ + 0.1 * fit_.deviation);
        bool least_is_below = false;
        for (int step = 0; step < most_steps; ++step) {
            const Below here = below(draws_, shared_sigma_, q);
            (here.probability < p ? low : high) = q;
            const double newton = q + (p - here.probability) / here.slope;
            if (!least_is_below && !(newton > least_)) {
                if (below(draws_, shared_sigma_, least_).probability >= p) return least_;
                least_is_below = true;
            }
            const double next = newton > low && newton < high ? std::min(newton, q + farthest * fit_.deviation)
                                : high < infinite             ? (low + high) / 2
                                                              : q + fit_.deviation;
            if (std::abs(next - q) <= close * fit_.deviation && next == newton) return next;
            if (high - low <= close * close * fit_.deviation) return next;
            q = next;
        }
        return q;
    }

private:
    static constexpr int most_steps = 60;
    static constexpr double farthest = 4;  // standard deviations
    static constexpr double infinite = std::numeric_limits<double>::infinity();
    const std::vector<Draw>& draws_;
    const Fit& fit_;
    double shared_sigma_, least_;
};

struct WantedWater {
    DoubtfulMix mix;
    Ratio wetness, least;
    std::size_t count;
    std::uint64_t seed;
    friend bool operator==(const WantedWater&, const WantedWater&) = default;
};

Range<Ratio> drawn_water_range(const DoubtfulMix& mix, Ratio wetness, Ratio least, std::size_t count,
                               std::uint64_t seed) {
    const SharedDoubt doubt(mix.hand, mix.parts);
    const double shared_sigma = mix.learnt_normals ? log_normal_sigma(day_spread) : doubt.sigma_of_first();
    const std::vector<Draw> draws =
        mix.learnt_normals ? learnt_draws(mix, wetness, count, seed) : draws_of(mix.parts, doubt, wetness, count, seed);
    const Fit fit = fit_of(draws, shared_sigma);
    const PointFinder finder(draws, fit, shared_sigma, least);
    return {finder.point(0.05), finder.point(0.5), finder.point(0.95)};
}

}  // namespace

Range<Ratio> wanted_water_range(const DoubtfulMix& mix, Ratio wetness, Ratio least, std::size_t count,
                                std::uint64_t seed) {
    static thread_local AskedBefore<WantedWater, Range<Ratio>> before;
    return before.answer({mix, wetness, least, count, seed},
                         [&] { return drawn_water_range(mix, wetness, least, count, seed); });
}

}  // namespace baitwright
