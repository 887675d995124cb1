#include "answers/mix/mix_doubt.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "answers/mix/drawn_solid.h"
#include "answers/mix/water_range.h"
#include "bait/kitchen_rounding.h"
#include "bait/wetted_mix.h"
#include "physics/normal_quantile.h"
#include "physics/quasi_random.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr std::size_t water_points = 1024;
constexpr std::size_t volume_points = 256;

template <class Q>
Range<Q> range_of(std::vector<double>& per_dry, Q each) {
    const double low = quantile_in_place(per_dry, 0.05), middle = quantile_in_place(per_dry, 0.5),
                 high = quantile_in_place(per_dry, 0.95);
    return {low * each, middle * each, high * each};
}

/// Water to add is affine in what the solids want, M w(h): the slope and the offset, per gram dry.
struct WaterLine {
    double slope, offset;
};

WaterLine water_line(const ResolvedMix& mix, const MixAnswer& answer) {
    MixNumbers numbers = numbers_of(mix);
    const double already = answer.water_already_in / answer.dry_mass;
    const auto water_with = [&](double stretch) {
        MixNumbers stretched = numbers;
        for (SolidNumbers& solid : stretched.solids)
            solid.marks = {solid.marks.absorption * stretch, solid.marks.slump * stretch};
        const WettedMix wetted = wet(stretched, answer.wetness, already);
        return std::make_pair(wetted.need.wetted_share * added_water_ratio(wetted.need.marks, answer.wetness),
                              double(wetted.water));
    };
    // Far above any liquid in it, where the water is not cut off at zero.
    const auto [want_a, water_a] = water_with(1e3);
    const auto [want_b, water_b] = water_with(2e3);
    if (!(want_b > want_a)) return {0, 0};
    const double slope = (water_b - water_a) / (want_b - want_a);
    return {slope, water_a - slope * want_a};
}

Range<Mass> water_range(const ResolvedMix& mix, const MixAnswer& answer, const std::vector<DoubtfulPart>& parts,
                        std::uint64_t seed) {
    if (parts.empty()) return {};
    const Range<Ratio> wanted = wanted_water_range(parts, answer.wetness, water_points, seed);
    const WaterLine line = water_line(mix, answer);
    const auto water = [&](Ratio wants) { return std::max(0.0, line.slope * wants + line.offset) * answer.dry_mass; };
    return {water(wanted.low), water(wanted.middle), water(wanted.high)};
}

Range<Volume> volume_range(const ResolvedMix& mix, const MixAnswer& answer, const std::vector<DoubtfulPart>& parts,
                           std::uint64_t seed) {
    QuasiRandomNormals draws(1 + 3 * parts.size() + 3 * mix.solids.size(), seed);
    std::vector<double> normals(draws.coordinates()), volumes(volume_points);
    const std::vector<DoubtfulBody> bodies = doubtful_bodies(mix);
    MixNumbers numbers = numbers_of(mix);
    const double already = answer.water_already_in / answer.dry_mass, sigma_hand = log_normal_sigma(hand_spread);
    const Ratio aim = answer.right_as_it_stands ? answer.wetness_in_tub : answer.wetness;
    for (double& one : volumes) {
        draws.next(normals);
        const double hand = std::exp(sigma_hand * normals[0]);
        for (std::size_t i = 0; i < parts.size(); ++i)
            numbers.solids[parts[i].solid].marks = drawn_marks(parts[i], hand, &normals[1 + 3 * i]);
        for (std::size_t i = 0; i < bodies.size(); ++i)
            bodies[i].draw(numbers.solids[i], &normals[1 + 3 * parts.size() + 3 * i]);
        const WettedMix wetted = wet(numbers, aim, already);
        one = wet_volume(pack(numbers, wetted), answer.state, std::min<double>(wetted.wetness, wettest))
                  .in(millilitre_per_gram);
    }
    return range_of(volumes, answer.dry_mass * (1.0 * millilitre_per_gram));
}

/// The bag whose inputs make most of the variance of the water, to first order.
void name_first_to_measure(const ResolvedMix& mix, const MixAnswer& answer, const std::vector<DoubtfulPart>& parts,
                           MixDoubt& doubt) {
    const double h = answer.wetness, of_absorption = std::min(h, 1.0), of_gap = std::max(h - 1, 0.0);
    double all = 0, most = 0;
    double wanted = 0;
    for (const DoubtfulPart& part : parts) {
        const double share = part.share;
        const double by_absorption = share * of_absorption * part.absorption * part.sigma_absorption;
        const double by_gap = share * of_gap * part.gap * part.sigma_gap;
        const double by_moisture = share * part.moisture * part.sigma_moisture / (1 - part.moisture) *
                                   (of_absorption * (1 + part.absorption) + of_gap * part.gap);
        const double square = by_absorption * by_absorption + by_gap * by_gap + by_moisture * by_moisture;
        wanted += share * (of_absorption * part.absorption + of_gap * part.gap);
        all += square;
        if (square <= most) continue;
        most = square;
        doubt.measure_first = mix.solids[part.solid].ingredient.name;
        doubt.measure_first_what = by_absorption >= std::max(by_gap, by_moisture) ? "absorption"
                                   : by_gap >= by_moisture                        ? "slump"
                                                                                  : "moisture";
    }
    const double hand = log_normal_sigma(hand_spread) * wanted;
    if (all > 0) doubt.measure_first_share = most / (all + hand * hand);
}

}  // namespace

Mass creeping_step(Mass water) {
    return std::max(kitchen_water(0.05 * water), 5.0 * gram);
}

Mass first_pour(const Range<Mass>& water) {
    constexpr double cautious_share = 0.7;
    return std::max(Mass{}, std::min(water.low, cautious_share * water.middle));
}

Range<Mass> water_to_wet(const ResolvedMix& mix, Ratio wetness, Mass dry, std::uint64_t seed) {
    MixAnswer answer;
    answer.wetness = wetness;
    answer.dry_mass = dry;
    return water_range(mix, answer, doubtful_parts(mix), seed);
}

MixDoubt doubt_of(const ResolvedMix& mix, const MixAnswer& answer, std::uint64_t seed) {
    const std::vector<DoubtfulPart> parts = doubtful_parts(mix);
    MixDoubt doubt;
    doubt.water = water_range(mix, answer, parts, seed);
    doubt.first_pour = first_pour(doubt.water);
    doubt.wet_volume = volume_range(mix, answer, parts, seed);
    if (answer.portions) {
        const auto fills = [&](Volume volume) { return volume / answer.portions->each; };
        doubt.portions = {fills(doubt.wet_volume.low), fills(doubt.wet_volume.middle), fills(doubt.wet_volume.high)};
    }
    name_first_to_measure(mix, answer, parts, doubt);
    return doubt;
}

}  // namespace baitwright
