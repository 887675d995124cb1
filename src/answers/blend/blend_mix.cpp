#include "answers/blend/blend_mix.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "answers/blend/blend_programme.h"
#include "answers/blend/share_batch.h"
#include "bait/resolve_mix.h"
#include "bait/wetted_mix.h"
#include "quantities/quantity_text.h"
#include "quantities/sort_stably.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using End = BlendLimitEnd::End;

/// Shares are saved in hundredths of a percent.
constexpr double saved_parts = 10000;
constexpr double cheapest_price = 1e-6;  // minor units: less is the solver's rounding

double step_of(const BlendLimitEnd& limit) {
    return limit.property ? facts_of(*limit.property).step : 0.01;
}

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

    BlendAnswer optimal(const BlendProgramme& programme, const LinearSolution& solution) {
        answer_.status = BlendAnswer::Status::optimal;
        take_shares(solution);
        for (const MixPropertyFacts& facts : mix_properties())
            if (const auto value = value_of(facts.property)) answer_.properties.push_back({facts.property, *value});
        take_costs();
        take_binding(programme, solution);
        sort_shares();
        weigh();
        save_shares();
        answer_.recipe = recipe();
        price();
        check_limits();
        return std::move(answer_);
    }

private:
    /// What no kitchen scale shows of the batch, and no saved percent, is left out.
    void take_shares(const LinearSolution& solution) {
        const double least_share = std::max<double>(0.5 / saved_parts, 0.5 * gram / blend_.batch);
        double sum = 0;
        for (const double value : solution.values) sum += value;
        shares_.assign(solution.values.size(), 0);
        double kept = 0;
        for (std::size_t i = 0; i < shares_.size(); ++i)
            if (solution.values[i] >= least_share * sum) kept += shares_[i] = solution.values[i];
        for (double& share : shares_) share /= kept;
    }

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

    void sort_shares() {
        for (std::size_t i = 0; i < shares_.size(); ++i)
            if (shares_[i] > 0) candidates_.push_back(i);
        sort_stably(candidates_.begin(), candidates_.end(),
                    [&](std::size_t a, std::size_t b) { return shares_[a] > shares_[b]; });
        for (const std::size_t i : candidates_) {
            answer_.shares.emplace_back();
            answer_.shares.back().ingredient = blend_.ingredients[i];
            answer_.shares.back().share = shares_[i];
            answer_.shares.back().price_per_kilogram = blend_.prices[i];
        }
    }

    void weigh() {
        std::vector<double> parts;
        for (const BlendShare& share : answer_.shares) parts.push_back(share.share);
        const std::vector<Mass> masses = shared_out(answer_.batch, parts);
        for (std::size_t i = 0; i < parts.size(); ++i) answer_.shares[i].weigh = masses[i];
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

    void check(const MixPropertyFacts& facts, const Limits& bounds, double value) {
        const double slack = 0.05 * facts.step;
        const bool low = bounds.least && value < *bounds.least - slack,
                   high = bounds.most && value > *bounds.most + slack;
        if (!low && !high) return;
        std::string message = "mixed, the " + std::string(facts.name) + " comes to " +
                              number_text_within(value, 0.2 * facts.step) + " " + std::string(facts.symbol) +
                              (low ? ", below the " : ", above the ") +
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

}  // namespace

BlendAnswer blend_mix(const Shelf& shelf, const BlendSpec& spec, const BlendRequest& request, LinearSolver& solver) {
    const ResolvedBlend blend =
        resolve_blend(spec, shelf, request.batch.value_or(spec.batch.value_or(usual_batch)), request.usual_currency);
    const BlendProgramme programme = programme_of(blend);
    const LinearSolution solution = solver.solve(programme.programme);
    BlendTeller teller(shelf, blend);
    switch (solution.status) {
        case LinearStatus::optimal:
            return teller.optimal(programme, solution);
        case LinearStatus::infeasible:
            return teller.infeasible(programme, solver);
        default:
            throw std::logic_error("the solver found neither a blend nor why there is none");
    }
}

}  // namespace baitwright
