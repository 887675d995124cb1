#include "answers/mix/let_down.h"

#include <algorithm>

#include "answers/mix/doubtful_mix.h"
#include "bait/wetted_mix.h"
#include "physics/quasi_random.h"

namespace baitwright {

namespace {

constexpr std::size_t let_down_points = 256;

Ratio more_water(const MixNumbers& numbers, const WetterShare& share) {
    return std::max(0.0, wet(numbers, share.to).water - wet(numbers, share.from).water);
}

}  // namespace

LetDownShare let_down(const ResolvedMix& mix, const WetterShare& share) {
    const MixNumbers numbers = numbers_of(mix);
    const WettedMix drier = wet(numbers, share.from), wetter = wet(numbers, share.to);
    LetDownShare told{drier.wet_mass * share.dry_mass, more_water(numbers, share) * share.dry_mass, {}};
    told.additives.reserve(drier.additives.size());
    for (std::size_t i = 0; i < drier.additives.size(); ++i)
        told.additives.push_back(std::max(0.0, wetter.additives[i] - drier.additives[i]) * share.dry_mass);
    return told;
}

Range<Mass> let_down_range(const ResolvedMix& mix, const WetterShare& share, std::uint64_t seed) {
    const DoubtfulMix doubtful = doubtful_mix(mix);
    if (doubtful.parts.empty()) return {};
    const MarkDraws marks(doubtful);
    QuasiRandomNormals draws(marks.normals(), seed);
    std::vector<double> normals(draws.coordinates()), more(let_down_points);
    MixNumbers numbers = numbers_of(mix);
    for (double& water : more) {
        draws.next(normals);
        marks.draw(normals.data(), numbers);
        water = more_water(numbers, share);
    }
    const auto point = [&](double p) { return quantile_in_place(more, p) * share.dry_mass; };
    const Mass low = point(0.05), middle = point(0.5);
    return {low, middle, point(0.95)};
}

}  // namespace baitwright
