#include "answers/blend/blend_programme.h"

#include <cmath>
#include <set>
#include <unordered_map>

#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using End = BlendLimitEnd::End;

constexpr double coefficient_rounding = 1e-13;

/// Builds the programme limit by limit.
class ProgrammeBuilder {
public:
    explicit ProgrammeBuilder(const ResolvedBlend& blend) : blend_(blend) {
        for (std::size_t i = 0; i < blend.ingredients.size(); ++i)
            places_.emplace(folded_name(blend.spec.candidates[i].of), i);
    }

    BlendProgramme build() {
        add_columns();
        for (std::size_t i = 0; i < blend_.ingredients.size(); ++i) add_share(i);
        for (const BlendLimit& limit : blend_.spec.limits) limit.on ? add_property(limit) : add_shares(limit);
        return std::move(built_);
    }

private:
    [[nodiscard]] bool per_litre() const { return blend_.spec.goal == BlendGoal::per_litre; }

    void add_columns() {
        built_.programme.rows.push_back({1, 1});
        for (std::size_t i = 0; i < blend_.ingredients.size(); ++i) {
            const double litres = 1.0 / blend_.ingredients[i].loose_density.value.in(kilogram / litre);
            built_.programme.columns.push_back({blend_.prices[i], {}, {{0, per_litre() ? litres : 1.0}}});
        }
    }

    /// In a kilogram the share of one candidate is its own column; in a litre it is a row.
    void add_share(std::size_t i) {
        const BlendCandidate& candidate = blend_.spec.candidates[i];
        const std::vector<std::string> of{blend_.ingredients[i].name};
        if (per_litre()) return add_ends(std::nullopt, of, candidate.share, terms_of_shares({i}));
        LinearColumn& column = built_.programme.columns[i];
        if (candidate.share.least) {
            column.bounds.lowest = *candidate.share.least;
            built_.limits.push_back(
                {{std::nullopt, of, End::least, *candidate.share.least}, PlacedLimit::Place::column, i, {}});
        }
        if (candidate.share.most) {
            column.bounds.highest = *candidate.share.most;
            built_.limits.push_back(
                {{std::nullopt, of, End::most, *candidate.share.most}, PlacedLimit::Place::column, i, {}});
        }
    }

    void add_shares(const BlendLimit& limit) {
        std::set<std::size_t> places;
        for (const std::string& of : limit.of) {
            const auto [first, last] = places_.equal_range(folded_name(of));
            for (auto named = first; named != last; ++named) places.insert(named->second);
        }
        std::vector<std::string> names;
        names.reserve(places.size());
        for (const std::size_t i : places) names.push_back(blend_.ingredients[i].name);
        add_ends(std::nullopt, names, limit.bounds, terms_of_shares(places));
    }

    void add_property(const BlendLimit& limit) {
        std::vector<PropertyTerms> terms;
        for (std::size_t i = 0; i < blend_.ingredients.size(); ++i)
            terms.push_back(candidate_terms(blend_, *limit.on, i));
        add_ends(limit.on, {}, limit.bounds, terms);
    }

    [[nodiscard]] std::vector<PropertyTerms> terms_of_shares(const std::set<std::size_t>& places) const {
        std::vector<PropertyTerms> terms(blend_.ingredients.size(), {0, 1});
        for (const std::size_t i : places) terms[i].amount = 1;
        return terms;
    }

    void add_ends(std::optional<MixProperty> property, const std::vector<std::string>& of, const Limits& bounds,
                  const std::vector<PropertyTerms>& terms) {
        if (bounds.least) add_row({property, of, End::least, *bounds.least}, terms);
        if (bounds.most) add_row({property, of, End::most, *bounds.most}, terms);
    }

    void add_row(const BlendLimitEnd& limit, const std::vector<PropertyTerms>& terms) {
        const std::size_t row = built_.programme.rows.size();
        built_.programme.rows.push_back(limit.end == End::least ? Bounds{0, without_limit} : Bounds{-without_limit, 0});
        PlacedLimit placed{limit, PlacedLimit::Place::row, row, {}};
        for (std::size_t i = 0; i < terms.size(); ++i) {
            const double had = terms[i].amount, asked = limit.bound * terms[i].weight, coefficient = had - asked;
            // What lies on its limit is on it, whatever rounding makes of it: a solver takes 1e-15 for a coefficient.
            if (std::abs(coefficient) > coefficient_rounding * (std::abs(had) + std::abs(asked)))
                built_.programme.columns[i].entries.push_back({row, coefficient});
            placed.weights.push_back(terms[i].weight);
        }
        built_.limits.push_back(std::move(placed));
    }

    const ResolvedBlend& blend_;
    std::unordered_multimap<std::string, std::size_t> places_;  // of the candidates, by their folded names
    BlendProgramme built_;
};

}  // namespace

BlendProgramme programme_of(const ResolvedBlend& blend) {
    return ProgrammeBuilder(blend).build();
}

double price_of_bound(const PlacedLimit& limit, const LinearSolution& solution) {
    if (limit.place == PlacedLimit::Place::column) {
        const double price = solution.reduced_costs[limit.at];
        return (price > 0) == (limit.limit.end == End::least) ? price : 0.0;
    }
    double weight = 0;
    for (std::size_t i = 0; i < limit.weights.size(); ++i) weight += limit.weights[i] * solution.values[i];
    return solution.row_prices[limit.at] * weight;
}

}  // namespace baitwright
