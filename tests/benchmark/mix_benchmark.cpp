// How long the parts of a mix take inside the process. Run with --benchmark_format=json for programs.
#include <benchmark/benchmark.h>

#include <cmath>
#include <string>
#include <vector>

#include "answers/mix/answer_mix.h"
#include "answers/mix/mix_doubt.h"
#include "answers/mix/scale_mix.h"
#include "answers/mix/water_range.h"
#include "bait/resolve_mix.h"
#include "library/open_library.h"
#include "physics/particle_cloud.h"
#include "physics/quasi_random.h"
#include "physics/soaked_grain.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

constexpr std::size_t points = 1024;

const MemoryShelf& shelf() {
    static const auto shelf = shipped_shelf();
    return *shelf;
}

/// Six parts that take water: the size the bars are stated for.
ResolvedMix six_parts() {
    Recipe recipe;
    recipe.name = "six parts";
    for (const char* name : {"brown crumb", "fishmeal, brown", "ground fishmeal pellet", "maize meal", "biscuit crumb",
                             "egg biscuit bird food"})
        recipe.parts.push_back({name, 100.0 * gram});
    return resolve(recipe, shelf());
}

MixRequest three_litres() {
    MixRequest request;
    request.target = WetVolume{3.0 * litre};
    return request;
}

void scaling(benchmark::State& state) {
    const ResolvedMix mix = six_parts();
    const std::vector<Feel> feels = shelf().feels();
    for (auto _ : state) benchmark::DoNotOptimize(scale_mix(mix, feels, three_litres()));
}
BENCHMARK(scaling)->Unit(benchmark::kMicrosecond);

void water_range(benchmark::State& state) {
    const DoubtfulMix mix = doubtful_mix(six_parts());
    std::uint64_t seed = 0;  // another each time: what was asked last is remembered
    for (auto _ : state) benchmark::DoNotOptimize(wanted_water_range(mix, 1.2, 0.0, points, ++seed));
    state.SetItemsProcessed(static_cast<std::int64_t>(state.iterations() * points));
}
BENCHMARK(water_range)->Unit(benchmark::kMicrosecond);

/// What any method pays: Sobol points turned to normals, for A, G and moisture of each part and the hand.
void sobol_and_inverse_normal(benchmark::State& state) {
    std::vector<double> point(1 + 3 * doubtful_mix(six_parts()).parts.size());
    std::uint64_t seed = 0;  // another each time, as above: the processor learns by heart which of 19,000 lie in a tail
    for (auto _ : state) {
        QuasiRandomNormals normals(point.size(), ++seed);
        for (std::size_t i = 0; i < points; ++i) {
            normals.next(point);
            benchmark::DoNotOptimize(point.data());
        }
    }
    state.SetItemsProcessed(static_cast<std::int64_t>(state.iterations() * points));
}
BENCHMARK(sobol_and_inverse_normal)->Unit(benchmark::kMicrosecond);

void whole_doubt(benchmark::State& state) {
    const ResolvedMix mix = six_parts();
    const MixAnswer answer = scale_mix(mix, shelf().feels(), three_litres());
    std::uint64_t seed = 0;
    for (auto _ : state) benchmark::DoNotOptimize(doubt_of(mix, answer, ++seed));
}
BENCHMARK(whole_doubt)->Unit(benchmark::kMicrosecond);

/// A pellet of 4 mm, 1.2 times as long, soaked to 40 % and stood until ready and until even; the counters are Fourier
/// numbers by its radius.
void soak_and_stand(benchmark::State& state) {
    const GrainSize size{4.0 * millimetre, 4.8 * millimetre};
    Area soaked, ready, even;
    for ([[maybe_unused]] auto round : state) {
        soaked = diffused_for_uptake(size, 0.4);
        const SoakedGrain grain(size, soaked);
        ready = grain.drained_until(0.5);
        even = grain.drained_until(0.2);
        benchmark::DoNotOptimize(ready);
        benchmark::DoNotOptimize(even);
    }
    const Area reach = (2.0 * millimetre) * (2.0 * millimetre);
    state.counters["soaked"] = double(soaked / reach);
    state.counters["ready"] = double(ready / reach);
    state.counters["even"] = double(even / reach);
}
BENCHMARK(soak_and_stand)->Unit(benchmark::kMicrosecond);

std::vector<CloudGrains> the_cloud(int classes) {
    std::vector<CloudGrains> grains;
    for (int i = 0; i < classes; ++i)
        grains.push_back({0.6 * (54.0 / classes) * millilitre,
                          0.002 * std::pow(1.08, i * 54.0 / classes) * metre_per_second,
                          0.1 * std::pow(1.05, i * 54.0 / classes) * millimetre});
    for (int i = 0; i < 6; ++i) grains.push_back({0.3 * millilitre, 0.0005 * metre_per_second, 0.05 * millimetre});
    return grains;
}

/// A cloud that breaks at 0.55 m in 2.5 m of water, by the number of its classes.
void particle_cloud(benchmark::State& state) {
    const std::vector<CloudGrains> grains = the_cloud(static_cast<int>(state.range(0)));
    const CloudStart start{{}, 0.55 * metre, 0.04 * metre, 0.55 * metre_per_second, {}};
    const Tow tow{{}, {}, 2.5 * metre};
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(ParticleCloud(start, grains, tow));
    if (state.range(0) != 54) return;
    const ParticleCloud cloud(start, grains, tow);
    for (const std::size_t i : {0U, 20U, 53U})
        state.counters["lands" + std::to_string(i)] = cloud.fates()[i].lands.si();
}
BENCHMARK(particle_cloud)->Arg(54)->Arg(108)->Arg(216)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
