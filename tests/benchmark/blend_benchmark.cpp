// How long a blend takes inside the process, by candidates x limits: programme, Clp, telling; Clp alone on the same;
// and a season of packs.
#include <benchmark/benchmark.h>

#include <random>
#include <string>

#include "answers/blending.h"
#include "answers/money/buy_packs.h"

using namespace baitwright;

namespace {

using Random = std::mt19937;
int pick(Random& random, int low, int high) {
    return std::uniform_int_distribution<int>(low, high)(random);
}

/// So many candidates, so many limits: on properties first, then on the shares of candidates together.
struct Asked {
    std::vector<blending::Made> all;
    BlendSpec spec;
};

Asked asked(int candidates, int limits) {
    Random random(1);
    Asked asked;
    for (int i = 0; i < candidates; ++i)
        asked.all.push_back({"made " + std::to_string(i), double(pick(random, 0, 70)), double(pick(random, 0, 25)),
                             double(pick(random, 0, 8)), pick(random, 50, 400)});
    std::vector<BlendLimit> all{blending::on(MixProperty::protein, 30), blending::on(MixProperty::fibre, {}, 8),
                                blending::on(MixProperty::salt, 1, 3)};
    while (int(all.size()) < limits) {
        BlendLimit limit;
        for (int i = 0; i < candidates; ++i)
            if (pick(random, 0, 9) == 0) limit.of.push_back(asked.all[std::size_t(i)].name);
        if (limit.of.empty()) continue;
        limit.bounds.most = 0.15;
        all.push_back(limit);
    }
    asked.spec = blending::spec_of(asked.all, all);
    return asked;
}

void blend(benchmark::State& state) {
    const Asked question = asked(int(state.range(0)), int(state.range(1)));
    const blending::MadeShelf shelf(question.all);
    ClpSolver solver;
    for (auto _ : state) {
        const BlendAnswer answer = blend_mix(shelf, question.spec, {}, solver);
        if (answer.status != BlendAnswer::Status::optimal) state.SkipWithError("infeasible");
    }
}
BENCHMARK(blend)->Args({30, 10})->Args({100, 20})->Args({300, 50})->Args({1000, 50})->Unit(benchmark::kMillisecond);

/// Notes which programmes a blend has solved.
class NotingSolver : public LinearSolver {
public:
    std::vector<LinearProgramme> programmes;

private:
    void fill(const LinearProgramme& programme, LinearSolution& solution) noexcept override {
        programmes.push_back(programme);
        solution = clp_.solve(programme);
    }
    ClpSolver clp_;
};

/// What any way of blending pays: Clp on the same programmes, and no more.
void clp_alone(benchmark::State& state) {
    const Asked question = asked(int(state.range(0)), int(state.range(1)));
    const blending::MadeShelf shelf(question.all);
    NotingSolver noting;
    blend_mix(shelf, question.spec, {}, noting);
    ClpSolver solver;
    for (auto _ : state)
        for (const LinearProgramme& programme : noting.programmes) benchmark::DoNotOptimize(solver.solve(programme));
}
BENCHMARK(clp_alone)->Args({1000, 50})->Unit(benchmark::kMillisecond);

void season(benchmark::State& state) {
    Random random(2);
    PackQuestion question;
    for (int i = 0; i < state.range(1); ++i) {
        PackNeed need;
        for (int s = 0; s < state.range(0); ++s)
            need.milligrams.push_back(pick(random, 0, 3) == 0 ? 0 : 1000 * pick(random, 50, 1500));
        const int small = 100'000 * pick(random, 1, 5), price = pick(random, 80, 400);
        need.packs = {{small, price}, {2 * small + 100'000, price * 2}, {5 * small + 100'000, price * 4}};
        need.shelf_life = 8;
        question.needs.push_back(std::move(need));
    }
    for (auto _ : state) benchmark::DoNotOptimize(buy_packs(question));
}
BENCHMARK(season)->Args({1, 10})->Args({8, 10})->Args({8, 60})->Args({20, 60})->Args({40, 60})->Unit(
    benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
