#include "answers/mix/mix_doubt.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "answers/mix/asked_before.h"
#include "answers/mix/drawn_solid.h"
#include "answers/mix/first_to_measure.h"
#include "answers/mix/water_range.h"
#include "bait/kitchen_rounding.h"
#include "bait/wetted_mix.h"
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

Range<Mass> water_range(const ResolvedMix& mix, const MixAnswer& answer, const DoubtfulMix& doubtful,
                        std::uint64_t seed) {
    if (doubtful.parts.empty()) return {};
    const WaterLine line = water_line(mix, answer);
    if (!(line.slope > 0)) return {};
    const double least = -line.offset / line.slope;
    const Range<Ratio> wanted = wanted_water_range(doubtful, answer.wetness, least, water_points, seed);
    const auto water = [&](Ratio wants) {
        return wants > least ? std::max(0.0, line.slope * wants + line.offset) * answer.dry_mass : Mass{};
    };
    return {water(wanted.low), water(wanted.middle), water(wanted.high)};
}

/// Everything that the volume of a gram of dry mix depends on.
struct VolumePerGram {
    MixNumbers numbers;
    DoubtfulMix doubtful;
    std::vector<DoubtfulBody> bodies;
    double already;
    Ratio aim;
    MixState state;
    std::uint64_t seed;
    friend bool operator==(const VolumePerGram&, const VolumePerGram&) = default;
};

/// In ml.
Range<double> drawn_volume(const VolumePerGram& asked) {
    const MarkDraws marks(asked.doubtful);
    QuasiRandomNormals draws(marks.normals() + 3 * asked.bodies.size(), asked.seed);
    std::vector<double> normals(draws.coordinates()), volumes(volume_points);
    MixNumbers numbers = asked.numbers;
    for (double& one : volumes) {
        draws.next(normals);
        marks.draw(normals.data(), numbers);
        for (std::size_t i = 0; i < asked.bodies.size(); ++i)
            asked.bodies[i].draw(numbers.solids[i], &normals[marks.normals() + 3 * i]);
        const WettedMix wetted = wet(numbers, asked.aim, asked.already);
        one = wet_volume(pack(numbers, wetted), asked.state, std::min<double>(wetted.wetness, wettest))
                  .in(millilitre_per_gram);
    }
    return range_of(volumes, 1.0);
}

Range<Volume> volume_range(const ResolvedMix& mix, const MixAnswer& answer, const DoubtfulMix& doubtful,
                           std::uint64_t seed) {
    static thread_local AskedBefore<VolumePerGram, Range<double>> before;
    VolumePerGram asked{numbers_of(mix),
                        doubtful,
                        doubtful_bodies(mix),
                        answer.water_already_in / answer.dry_mass,
                        answer.right_as_it_stands ? answer.wetness_in_tub : answer.wetness,
                        answer.state,
                        seed};
    const Range<double> each = before.answer(asked, [&] { return drawn_volume(asked); });
    const Volume of_a_millilitre = answer.dry_mass * (1.0 * millilitre_per_gram);
    return {each.low * of_a_millilitre, each.middle * of_a_millilitre, each.high * of_a_millilitre};
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
    return water_range(mix, answer, doubtful_mix(mix), seed);
}

Range<Volume> volume_of_tub(const ResolvedMix& mix, const WettedTub& tub, MixState state, std::uint64_t seed) {
    MixAnswer answer;
    answer.dry_mass = tub.dry_mass;
    answer.water_already_in = tub.water_in;
    answer.wetness = tub.wetness;
    answer.state = state;
    return volume_range(mix, answer, doubtful_mix(mix), seed);
}

MixDoubt doubt_of(const ResolvedMix& mix, const MixAnswer& answer, std::uint64_t seed) {
    const DoubtfulMix doubtful = doubtful_mix(mix);
    MixDoubt doubt;
    doubt.water = water_range(mix, answer, doubtful, seed);
    doubt.first_pour = first_pour(doubt.water);
    doubt.wet_volume = volume_range(mix, answer, doubtful, seed);
    if (answer.portions) {
        const auto fills = [&](Volume volume) { return volume / answer.portions->each; };
        doubt.portions = {fills(doubt.wet_volume.low), fills(doubt.wet_volume.middle), fills(doubt.wet_volume.high)};
    }
    if (const auto first = first_to_measure(doubtful, answer.wetness)) {
        doubt.measure_first = mix.solids[first->solid].ingredient.name;
        doubt.measure_first_what = first->what;
        doubt.measure_first_share = first->share;
    }
    return doubt;
}

}  // namespace baitwright
