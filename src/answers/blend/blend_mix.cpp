#include "answers/blend/blend_mix.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "answers/blend/blend_programme.h"
#include "answers/blend/weighed_blend.h"
#include "bait/resolve_mix.h"
#include "bait/wetted_mix.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/quantity_text.h"
#include "quantities/sort_stably.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using End = BlendLimitEnd::End;

constexpr double cheapest_price = 1e-6;  // minor units: less is the solver's rounding

/// Works out the answer from the optimum.
class BlendTeller {
public:
    BlendTeller(const Shelf& shelf, const ResolvedBlend& blend) : shelf_(shelf), blend_(blend) {
        answer_.name = blend.spec.name;
        answer_.goal = blend.spec.goal;
        answer_.batch = blend.batch;
        answer_.currency = blend.currency;
    }

    BlendAnswer infeasible(const BlendProgramme& programme, LinearSolver& solver) {
        answer_.status = BlendAnswer::Status::infeasible;
        for (const std::size_t i : conflicting_limits(programme, solver))
            answer_.conflicts.push_back(programme.limits[i].limit);
        return std::move(answer_);
    }

    /// `masses` of the candidates are those of `weighed_blend`.
    BlendAnswer optimal(const BlendProgramme& programme, const LinearSolution& solution,
                        const std::vector<Mass>& masses) {
        answer_.status = BlendAnswer::Status::optimal;
        shares_ = shares_kept(solution, blend_.batch);
        for (const MixPropertyFacts& facts : mix_properties())
            if (const auto value = value_of(facts.property)) answer_.properties.push_back({facts.property, *value});
        take_costs();
        take_binding(programme, solution);
        sort_shares(masses);
        save_shares();
        answer_.recipe = recipe();
        price();
        check_limits();
        check_shares(programme);
        return std::move(answer_);
    }

private:
    [[nodiscard]] std::optional<double> value_of(MixProperty property) const {
        double amount = 0, weight = 0;
        for (std::size_t i = 0; i < shares_.size(); ++i) {
            if (shares_[i] == 0) continue;
            if (property != MixProperty::price && !terms_of(property, blend_.ingredients[i])) return std::nullopt;
            const PropertyTerms terms = candidate_terms(blend_, property, i);
            amount += shares_[i] * terms.amount;
            weight += shares_[i] * terms.weight;
        }
        if (!(weight > 0)) return std::nullopt;
        return amount / weight;
    }

    void take_costs() {
        answer_.cost_per_kilogram = *value_of(MixProperty::price);
        answer_.cost_per_litre = answer_.cost_per_kilogram * *value_of(MixProperty::loose_density) / 1000;
    }

    void take_binding(const BlendProgramme& programme, const LinearSolution& solution) {
        for (const PlacedLimit& placed : programme.limits) {
            const double step = step_of(placed.limit);
            const double tighter = placed.limit.end == End::least ? step : -step;
            const double price = tighter * price_of_bound(placed, solution);
            if (price > cheapest_price) answer_.binding.push_back({placed.limit, step, price});
        }
        sort_stably(answer_.binding.begin(), answer_.binding.end(),
                    [](const BindingLimit& a, const BindingLimit& b) { return a.price_minor > b.price_minor; });
    }

    void sort_shares(const std::vector<Mass>& masses) {
        for (std::size_t i = 0; i < shares_.size(); ++i)
            if (shares_[i] > 0) candidates_.push_back(i);
        sort_stably(candidates_.begin(), candidates_.end(),
                    [&](std::size_t a, std::size_t b) { return shares_[a] > shares_[b]; });
        for (const std::size_t i : candidates_) {
            answer_.shares.emplace_back();
            answer_.shares.back().ingredient = blend_.ingredients[i];
            answer_.shares.back().share = shares_[i];
            answer_.shares.back().price_per_kilogram = blend_.prices[i];
            answer_.shares.back().weigh = masses[i];
        }
    }

    void save_shares() {
        std::vector<double> exact;
        for (const BlendShare& share : answer_.shares) exact.push_back(share.share * saved_parts);
        saved_ = round_to_sum(exact);
    }

    /// In the share of a recipe.
    [[nodiscard]] double saved_percent(std::size_t share) const { return static_cast<double>(saved_[share]) / 100; }

    /// What `mix` says of as much of what is saved: the same shares of the same sum, so that both agree to the penny.
    void price() {
        Mass whole;
        for (std::size_t i = 0; i < saved_.size(); ++i) whole += saved_percent(i) * kilogram;
        std::vector<double> costs;
        for (std::size_t i = 0; i < saved_.size(); ++i) {
            const Ratio share = saved_percent(i) * kilogram / whole;
            costs.push_back(candidate_cost(blend_, candidates_[i], share * answer_.batch));
        }
        const std::vector<std::int64_t> minor = round_to_sum(costs);
        answer_.cost = Money(0, *answer_.currency);
        for (std::size_t i = 0; i < costs.size(); ++i) {
            answer_.shares[i].exact_cost = costs[i];
            answer_.shares[i].cost = Money(minor[i], *answer_.currency);
            answer_.cost += answer_.shares[i].cost;
        }
    }

    [[nodiscard]] Recipe recipe() const {
        Recipe recipe;
        recipe.name = blend_.spec.name;
        recipe.feel = blend_.spec.feel;
        recipe.note = blend_.spec.note;
        for (std::size_t i = 0; i < saved_.size(); ++i)
            if (saved_[i] > 0) recipe.parts.push_back({answer_.shares[i].ingredient.name, Share{saved_percent(i)}, {}});
        return recipe;
    }

    /// The mix that is saved goes through what `mix` would do with it, and every limit is held against that: the
    /// rounding of the shares must not break one, and the packing of the grains may.
    void check_limits() {
        MixNumbers numbers = numbers_of(resolve(answer_.recipe, shelf_));
        const MixWaterNeed need = water_need(numbers.solids);
        for (const BlendLimit& limit : blend_.spec.limits) {
            if (!limit.on) continue;
            const auto stated = value_of(*limit.on);
            if (!stated) continue;
            double value = *stated;
            if (*limit.on == MixProperty::absorption) value = need.marks.absorption;
            if (*limit.on == MixProperty::slump) value = need.marks.slump;
            if (*limit.on == MixProperty::loose_density) value = (1.0 / dry_volume(numbers)).in(gram_per_litre);
            check(facts_of(*limit.on), limit.bounds, value);
        }
    }

    /// What is left out because no scale shows it may have been asked for.
    void check_shares(const BlendProgramme& programme) {
        for (const PlacedLimit& placed : programme.limits) {
            const BlendLimitEnd& limit = placed.limit;
            if (limit.property) continue;
            double share = 0;
            for (const BlendShare& in : answer_.shares)
                if (std::find(limit.of.begin(), limit.of.end(), in.ingredient.name) != limit.of.end())
                    share += in.share;
            const double missed = limit.end == End::least ? limit.bound - share : share - limit.bound;
            if (missed <= 0.05 * step_of(limit)) continue;
            const auto percent_text = [](double ratio) { return number_text_within(100 * ratio, 0.005) + " %"; };
            answer_.warnings.push_back(
                {"limit-missed", "without what no scale shows of so little, the " + listed(limit.of) +
                                     (limit.of.size() > 1 ? " come to " : " comes to ") + percent_text(share) +
                                     (limit.end == End::least ? ", below the " : ", above the ") +
                                     percent_text(limit.bound) + " asked for"});
        }
    }

    void check(const MixPropertyFacts& facts, const Limits& bounds, double value) {
        const double slack = 0.05 * facts.step;
        const bool low = bounds.least && value < *bounds.least - slack,
                   high = bounds.most && value > *bounds.most + slack;
        if (!low && !high) return;
        std::string message =
            "mixed, the " + std::string(facts.name) + " comes to " + number_text_within(value, 0.2 * facts.step) +
            (facts.symbol.empty() ? "" : " " + std::string(facts.symbol)) + (low ? ", below the " : ", above the ") +
            number_text(low ? *bounds.least : *bounds.most) + " asked for";
        if (facts.property == MixProperty::loose_density) message += ": fine grains fill the gaps of coarse ones";
        answer_.warnings.push_back({"limit-missed", std::move(message)});
    }

    const Shelf& shelf_;
    const ResolvedBlend& blend_;
    std::vector<double> shares_;           // of the candidates, in their order
    std::vector<std::size_t> candidates_;  // of the shares told
    std::vector<std::int64_t> saved_;      // of the same, in hundredths of a percent
    BlendAnswer answer_;
};

/// A blend as it is solved for a batch, which decides the prices.
struct SolvedBlend {
    ResolvedBlend blend;
    BlendProgramme programme;
    LinearSolution solution;
};

SolvedBlend solved_for(const Shelf& shelf, const BlendSpec& spec, Mass batch, const Currency* usual,
                       LinearSolver& solver) {
    SolvedBlend solved{resolve_blend(spec, shelf, batch, usual), {}, {}};
    solved.programme = programme_of(solved.blend);
    solved.solution = solver.solve(solved.programme.programme);
    return solved;
}

/// Of a batch of which whole grams break the limits; the one named is solved anew, for its prices may be others.
[[noreturn]] void refuse_batch(const Shelf& shelf, const BlendSpec& spec, const Currency* usual, SolvedBlend solved,
                               LinearSolver& solver) {
    const Mass asked = solved.blend.batch;
    std::optional<Mass> works = batch_to_weigh(solved.programme, solved.solution, asked);
    while (works) {
        solved = solved_for(shelf, spec, *works, usual, solver);
        if (solved.solution.status == LinearStatus::optimal && weighed_blend(solved.programme, solved.solution, *works))
            break;
        works = batch_to_weigh(solved.programme, solved.solution, *works);
    }
    const std::string grams = works ? number_text_within(works->in(gram), 0.01) : "";
    throw UsageError("batch-too-small",
                     "in whole grams, so small a batch cannot be weighed within the limits of " + in_quotes(spec.name),
                     works ? "the next that can be is of " + grams + " g: --batch " + grams + "g" : "make more of it");
}

}  // namespace

BlendAnswer blend_mix(const Shelf& shelf, const BlendSpec& spec, const BlendRequest& request, LinearSolver& solver) {
    SolvedBlend solved = solved_for(shelf, spec, request.batch.value_or(spec.batch.value_or(usual_batch)),
                                    request.usual_currency, solver);
    BlendTeller teller(shelf, solved.blend);
    switch (solved.solution.status) {
        case LinearStatus::optimal:
            if (const auto masses = weighed_blend(solved.programme, solved.solution, solved.blend.batch))
                return teller.optimal(solved.programme, solved.solution, *masses);
            refuse_batch(shelf, spec, request.usual_currency, std::move(solved), solver);
        case LinearStatus::infeasible:
            return teller.infeasible(solved.programme, solver);
        default:
            throw std::logic_error("the solver found neither a blend nor why there is none");
    }
}

}  // namespace baitwright
