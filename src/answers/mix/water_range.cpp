#include "answers/mix/water_range.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "answers/mix/asked_before.h"
#include "answers/mix/points_of_draws.h"
#include "physics/normal_quantile.h"
#include "physics/quasi_random.h"
#include "physics/small_exponentials.h"

namespace baitwright {

namespace {

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

void draw(Draws& draws, std::size_t place, const std::vector<Weights>& weights, const double* factors,
          const MarkFactors& beside) {
    const SharedFactors shared{beside.of(MarkOrigin::measured), beside.of(MarkOrigin::from_memory),
                               beside.of(MarkOrigin::other), beside.of(MarkOrigin::learnt)};
    double by_shared = 0, fixed = 0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        const Weights& w = weights[i];
        const double bag = drawn_bag(w.moisture, factors[3 * i + 2]);
        by_shared += w.absorption.in_draw(factors[3 * i], shared, 1 - bag) +
                     w.second.in_draw(factors[3 * i + 1], shared, 1 - bag);
        fixed += w.fixed - w.by_bag * bag;
    }
    draws.by_shared[place] = by_shared;
    draws.fixed[place] = fixed;
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

Draws draws_of(const std::vector<DoubtfulPart>& parts, const SharedDoubt& doubt, double wetness, std::size_t count,
               std::uint64_t seed) {
    const std::size_t shared = doubt.normals_beside_first();
    QuasiRandomNormals normals(shared + 3 * parts.size(), seed);
    constexpr std::size_t rows = 8;  // drawn together, so that the exponentials come in long runs
    const std::size_t width = normals.coordinates();
    const std::vector<double> sigma = sigmas_of(parts, shared, rows);
    std::vector<double> z(rows * width), factors(rows * width);
    const std::vector<Weights> weights = weights_of(parts, wetness);
    Draws draws(count);
    for (std::size_t first = 0; first < count; first += rows) {
        for (std::size_t row = 0; row < rows; ++row) normals.next({&z[row * width], width});
        exponentials(sigma, z, factors);
        for (std::size_t row = 0; row < std::min(rows, count - first); ++row)
            draw(draws, first + row, weights, &factors[row * width] + shared, doubt.beside_first(&z[row * width]));
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
Draws learnt_draws(const DoubtfulMix& mix, double wetness, std::size_t count, std::uint64_t seed) {
    constexpr std::size_t rows = 8;
    const OwnPlaces places(mix.parts, *mix.learnt_normals);
    const std::size_t width = 3 * mix.parts.size(), drawn = std::max<std::size_t>(1, places.normals);
    QuasiRandomNormals normals(drawn, seed);
    std::vector<double> z(drawn + 3), logs(rows * width), factors(rows * width);
    const std::vector<double> as_they_are(rows * width, 1.0);
    const std::vector<Weights> weights = weights_of(mix.parts, wetness);
    Draws draws(count);
    for (std::size_t first = 0; first < count; first += rows) {
        for (std::size_t row = 0; row < rows; ++row) {
            normals.next({z.data(), drawn});
            log_factors(mix.parts, places, z.data(), &logs[row * width]);
        }
        exponentials(as_they_are, logs, factors);
        for (std::size_t row = 0; row < std::min(rows, count - first); ++row)
            draw(draws, first + row, weights, &factors[row * width], MarkFactors{});
    }
    return draws;
}

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
    const Draws draws =
        mix.learnt_normals ? learnt_draws(mix, wetness, count, seed) : draws_of(mix.parts, doubt, wetness, count, seed);
    return points_of(draws, shared_sigma, least);
}

}  // namespace

Range<Ratio> wanted_water_range(const DoubtfulMix& mix, Ratio wetness, Ratio least, std::size_t count,
                                std::uint64_t seed) {
    static thread_local AskedBefore<WantedWater, Range<Ratio>> before;
    return before.answer({mix, wetness, least, count, seed},
                         [&] { return drawn_water_range(mix, wetness, least, count, seed); });
}

}  // namespace baitwright
