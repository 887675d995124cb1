#include "answers/learn/water_doubts.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "bait/hand.h"
#include "physics/normal_quantile.h"
#include "quantities/sort_stably.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using Mark = WaterSeen::Term::Mark;

constexpr double test_error = 0.02;  // of a squeeze test or an up-ended pot, beside the hand of its day
constexpr double most_lever = 5;     // of the wetting against the water: beyond, the liquids do nearly all
constexpr std::size_t most_mixes = 200;

double squared(double x) {
    return x * x;
}

double variance_of_day() {
    return squared(log_normal_sigma(day_spread));
}

/// The logarithm of what a mix takes up, and its slope, where the unknowns are thought to lie.
struct DoubtedMix {
    LinearForm slope;
    double variance = 0;
    double lever = 1;  ///< of the wetting against the water

    [[nodiscard]] double doubt(double of_variance) const {
        return normal_quantile(0.95) * lever * std::sqrt(std::max(0.0, of_variance) + variance_of_day());
    }
    [[nodiscard]] double doubt() const { return doubt(variance); }
};

DoubtedMix doubted(const WaterTaught& taught, const MixOfLog& mix, const std::vector<double>& at) {
    SumSlope sum = slope_of(taught.log.problem.unknowns, mix.terms, at);
    const double all = std::exp(sum.log_value), water = all - mix.last->wetting.in(gram);
    return {std::move(sum.slope), 0, std::min(most_lever, all / std::max(water, all / most_lever))};
}

std::vector<DoubtedMix> doubted_now(const WaterTaught& taught, const std::vector<MixOfLog>& mixes) {
    std::vector<DoubtedMix> all;
    for (const MixOfLog& mix : mixes) {
        all.push_back(doubted(taught, mix, taught.out.fit.best));
        all.back().variance = taught.covariance.of(all.back().slope);
    }
    return all;
}

/// A test that was not made yet, and what it would see.
struct PossibleTest {
    NextTest::Kind kind;
    std::string of;
    LinearForm slope;
    double variance;  ///< of its error and the hand of its day
};

void add_tests_of_bag(const WaterTaught& taught, std::size_t ingredient, std::vector<PossibleTest>& tests) {
    const WaterUnknowns& unknowns = taught.log.problem.unknowns;
    const std::size_t latest = bag_on(unknowns, ingredient, std::nullopt);
    const BagOfWater& bag = unknowns.bags[latest];
    if (!bag.takes_water()) return;
    const WaterSeen::Term absorption{bag.absorption, bag.on_absorption, latest, Mark::absorption},
        gap{bag.gap, bag.on_gap, latest, Mark::gap};
    const double variance = squared(test_error) + variance_of_day();
    const auto add = [&](NextTest::Kind kind, const std::vector<WaterSeen::Term>& terms) {
        tests.push_back({kind, bag.name, slope_of(unknowns, terms, taught.out.fit.best).slope, variance});
    };
    if (!taught.log.measured_absorption[ingredient]) add(NextTest::Kind::squeeze, {absorption});
    if (!taught.log.measured_slump[ingredient]) add(NextTest::Kind::up_ended_pot, {absorption, gap});
}

std::vector<PossibleTest> possible_tests(const WaterTaught& taught, const std::vector<MixOfLog>& mixes,
                                         const std::vector<DoubtedMix>& now) {
    std::vector<PossibleTest> tests;
    std::set<std::size_t> ingredients;
    for (const MixOfLog& mix : mixes)
        for (const WeighedPart& part : mix.last->parts) ingredients.insert(taught.log.ingredients.at(part.of));
    for (const std::size_t ingredient : ingredients) add_tests_of_bag(taught, ingredient, tests);
    for (std::size_t i = 0; i < mixes.size(); ++i)
        tests.push_back({NextTest::Kind::log_mix, mixes[i].last->of, now[i].slope,
                         squared(sigma_of_reading(mixes[i].terms, *mixes[i].last)) + variance_of_day()});
    return tests;
}

/// What the doubts would be after a test, at their mean; and of which mix it makes most less.
NextTest previewed(const WaterTaught& taught, const PossibleTest& test, const std::vector<MixOfLog>& mixes,
                   const std::vector<DoubtedMix>& now) {
    NextTest next;
    next.kind = test.kind;
    next.of = test.of;
    const std::vector<double> with = taught.covariance.with(test.slope);
    const double own = value_of(test.slope, with) + test.variance;
    double most = -1;
    for (std::size_t i = 0; i < mixes.size(); ++i) {
        const double before = now[i].doubt();
        const double after = now[i].doubt(now[i].variance - squared(value_of(now[i].slope, with)) / own);
        next.all_now += before / static_cast<double>(mixes.size());
        next.all_then += after / static_cast<double>(mixes.size());
        if (before - after <= most) continue;
        most = before - after;
        next.most_for = mixes[i].last->of;
        next.now = before;
        next.then = after;
    }
    return next;
}

}  // namespace

std::vector<MixOfLog> mixes_of(const WaterTaught& taught, const LearnRequest& request) {
    std::map<std::string, MixOfLog> by_name;
    for (const WaterSeen& seen : taught.log.problem.seen) {
        if (!seen.entry) continue;
        const auto& mix = std::get<LoggedMix>(request.log[*seen.entry].what);
        MixOfLog& of = by_name.try_emplace(folded_name(mix.of), MixOfLog{&mix}).first->second;
        of.last = &mix;
        ++of.times;
    }
    std::vector<MixOfLog> mixes;
    for (auto& [name, mix] : by_name) {
        mix.terms = water_terms(taught.log, *mix.last, std::nullopt);
        if (!mix.terms.empty()) mixes.push_back(std::move(mix));
    }
    sort_stably(mixes.begin(), mixes.end(), [](const MixOfLog& a, const MixOfLog& b) { return a.times > b.times; });
    return mixes;
}

std::vector<MixDoubtNow> mix_doubts(const WaterTaught& taught, const std::vector<MixOfLog>& mixes) {
    const std::vector<DoubtedMix> now = doubted_now(taught, mixes);
    const std::vector<double> middle(taught.log.problem.unknowns.count);
    std::vector<MixDoubtNow> doubts;
    for (std::size_t i = 0; i < mixes.size(); ++i) {
        const DoubtedMix before = doubted(taught, mixes[i], middle);
        const auto taken = [&](const std::vector<double>& at) {
            return slope_of(taught.log.problem.unknowns, mixes[i].terms, at).log_value;
        };
        doubts.push_back({mixes[i].last->of, mixes[i].last->feel, before.doubt(variance_before(before.slope)),
                          now[i].doubt(), mixes[i].times, taken(taught.out.fit.best) - taken(middle)});
    }
    return doubts;
}

std::optional<NextTest> next_test(const WaterTaught& taught, const std::vector<MixOfLog>& all) {
    const std::vector<MixOfLog> mixes(all.begin(),
                                      all.begin() + static_cast<std::ptrdiff_t>(std::min(all.size(), most_mixes)));
    const std::vector<DoubtedMix> now = doubted_now(taught, mixes);
    std::optional<NextTest> best;
    for (const PossibleTest& test : possible_tests(taught, mixes, now)) {
        const NextTest next = previewed(taught, test, mixes, now);
        if (!best || next.all_then < best->all_then) best = next;
    }
    return best;
}

}  // namespace baitwright
