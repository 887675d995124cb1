// How long a whole plan of each shipped strategy takes inside the process: four anglers, warm water, a clock; and one
// of ten feeds, five feels of one mix among them, on a hot day with kept mix. The bar is 5 ms. Run with
// --benchmark_format=json for programs.
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

Feed cup_of(const std::string& mix, FeedTiming when, const std::string& feel) {
    return {std::move(when), {{mix}}, FeedForm::cup, 250.0 * millilitre, 1, feel};
}

Strategy ten_feeds() {
    Strategy strategy;
    strategy.name = "ten feeds";
    strategy.length = 5.0 * hour;
    strategy.pace.put_ins_per_hour = 12;
    strategy.air = {Temperature::from_celsius(30), Ratio(0.4), {}, true};
    for (const char* feel : {"crumbly", "firm", "tacky", "soft", "slop"})
        strategy.feeds.push_back(cup_of("silt bed", {EveryTime{30.0 * minute}, {}, {}}, feel));
    for (const char* mix : {"open shelf", "dark treacle", "songbird"})
        strategy.feeds.push_back(cup_of(mix, {EveryPutIn{}, {}, {}}, ""));
    strategy.feeds.push_back(cup_of("plain micros", {EveryPutIn{}, {}, {}}, ""));
    strategy.feeds.push_back(cup_of("silt bed", {WhenSlow{3}, {}, {}}, "firm"));
    strategy.hookbaits = {{"expander 4 mm", BitesPerHour{12}}};
    return strategy;
}

void plan_of(benchmark::State& state, const Strategy& strategy) {
    PlanRequest request;
    request.cost.what_if.kept = {{"silt bed", 500.0 * gram, StockState::frozen, "soft", {}, {}, 0}};
    request.start = 9 * 60 + 30;
    request.water = Temperature::from_celsius(30);
    request.cost.what_if.people = 4;
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(plan_session(shelf(), strategy, {}, request));
}

}  // namespace

int main(int argc, char** argv) {
    for (const std::string& name : shelf().strategy_names())
        benchmark::RegisterBenchmark(name.c_str(), [name](benchmark::State& state) {
            plan_of(state, shelf().strategy(name));
        })->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark("ten feeds", [](benchmark::State& state) {
        plan_of(state, ten_feeds());
    })->Unit(benchmark::kMillisecond);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
}
