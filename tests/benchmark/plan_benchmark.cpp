// How long a whole plan of each shipped strategy takes inside the process: four anglers, warm water, a clock. The bar
// is 5 ms. Run with --benchmark_format=json for programs.
#include <benchmark/benchmark.h>

#include <string>

#include "answers/plan/plan_session.h"
#include "library/open_library.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

const MemoryShelf& shelf() {
    static const auto shelf = shipped_shelf();
    return *shelf;
}

void plan_of(benchmark::State& state, const std::string& name) {
    const Strategy strategy = shelf().strategy(name);
    PlanRequest request;
    request.start = 9 * 60 + 30;
    request.water = Temperature::from_celsius(30);
    request.cost.what_if.people = 4;
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(plan_session(shelf(), strategy, {}, request));
}

}  // namespace

int main(int argc, char** argv) {
    for (const std::string& name : shelf().strategy_names())
        benchmark::RegisterBenchmark(name.c_str(), [name](benchmark::State& state) {
            plan_of(state, name);
        })->Unit(benchmark::kMillisecond);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
}
