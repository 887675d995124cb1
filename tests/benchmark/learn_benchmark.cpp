// How long `learn_from_log` takes inside the process: 10,000 invented mixes of six of 200 ingredients, over 4,000 days,
// one in twenty absurd. The bar is one second of processor. Run with --benchmark_format=json for programs.
#include <benchmark/benchmark.h>

#include <cmath>
#include <random>
#include <string>

#include "answers/learn/learn_from_log.h"
#include "bait/memory_shelf.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

constexpr int ingredients = 200, parts = 6, days = 4000;

Ingredient meal(int number, std::mt19937_64& random) {
    std::uniform_real_distribution<double> absorption(0.3, 1.2);
    Ingredient in;
    in.name = "meal " + std::to_string(number);
    in.loose_density = {500.0 * gram_per_litre, 0.1, {Origin::standing, "from memory"}};
    in.absorption = {absorption(random), 0.15, {Origin::standing, "from memory"}};
    in.slump = {1.7 * in.absorption.value, 0.15, {Origin::standing, "from memory"}};
    in.moisture = {0.1, 0.15, {Origin::standing, "from memory"}};
    return in;
}

const MemoryShelf& shelf() {
    static const MemoryShelf& all = *[] {
        auto* made = new MemoryShelf;
        std::mt19937_64 random(1);
        for (int i = 0; i < ingredients; ++i) made->put(meal(i, random));
        return made;
    }();
    return all;
}

/// What a hand that reads the wetness to 0.05 is off in the water, as a share of it.
double sigma_of(double wetness) {
    return std::hypot(0.05 * (wetness > 1 ? 0.7 / (1 + 0.7 * (wetness - 1)) : 1 / wetness), 0.01);
}

LogEntry mixed(int number, const std::vector<double>& bags, const std::vector<double>& by_day,
               std::mt19937_64& random) {
    std::normal_distribution<double> normal;
    std::uniform_int_distribution<int> which(0, ingredients - 1), of_day(0, static_cast<int>(by_day.size()) - 1);
    std::uniform_real_distribution<double> felt(0.8, 1.8), mass(50, 400);
    LoggedMix mix;
    mix.of = "mix " + std::to_string(number % 50);
    mix.wetness = felt(random);
    mix.within = 0.05;
    mix.dry = 1.0 * kilogram;
    double wanted = 0;
    for (int i = 0; i < parts; ++i) {
        const int one_of = which(random);
        const Ingredient in = *shelf().find_ingredient("meal " + std::to_string(one_of));
        mix.parts.push_back({in.name, mass(random) * gram});
        wanted += mix.parts.back().mass.in(gram)*bags[static_cast<std::size_t>(one_of)] *
                  (std::min<double>(*mix.wetness, 1) + 0.7 * std::max(0.0, double(*mix.wetness) - 1)) *
                  in.absorption.value;
    }
    const int on = of_day(random);
    wanted *= std::exp(0.05 * by_day[static_cast<std::size_t>(on)] + sigma_of(*mix.wetness) * normal(random));
    if (number % 20 == 7) wanted *= number % 40 < 20 ? 2 : 0.5;
    mix.water = wanted * gram;
    LogEntry entry;
    entry.id = number + 1;
    entry.on = Date(std::chrono::days(20000 + on));
    entry.what = std::move(mix);
    return entry;
}

LearnRequest long_log(int mixes, int of_days) {
    std::mt19937_64 random(2);
    std::normal_distribution<double> normal;
    std::vector<double> bags;
    for (int i = 0; i < ingredients; ++i) bags.push_back(std::exp(0.15 * normal(random) + 0.1));
    LearnRequest request;
    std::vector<double> by_day;
    for (int i = 0; i < of_days; ++i) by_day.push_back(normal(random));
    for (int i = 0; i < mixes; ++i) request.log.push_back(mixed(i, bags, by_day, random));
    return request;
}

void learn(benchmark::State& state, int of_days) {
    const LearnRequest request = long_log(static_cast<int>(state.range(0)), of_days);
    for ([[maybe_unused]] auto round : state) {
        const LearnAnswer answer = learn_from_log(shelf(), request);
        state.counters["set aside"] = static_cast<double>(answer.set_aside.size());
    }
}

}  // namespace

BENCHMARK_CAPTURE(learn, each_on_one_of_4000_days, days)
    ->Arg(100)
    ->Arg(1000)
    ->Arg(10000)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(learn, all_on_one_day, 1)->Arg(10000)->Unit(benchmark::kMillisecond);
BENCHMARK_MAIN();
