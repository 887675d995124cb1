#include "answers/blend/swap_ingredient.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "answers/blend/closest_match.h"
#include "answers/blend/swapped_mix.h"
#include "bait/pellets_alone.h"
#include "bait/raw_seed.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/said_name.h"
#include "quantities/sort_stably.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

constexpr double most_calibre = 2.001;  // twice, but for rounding

bool is_fed_by_the_piece(IngredientKind kind) {
    return kind == IngredientKind::pellet || kind == IngredientKind::expander || kind == IngredientKind::seed ||
           kind == IngredientKind::particle;
}

bool same_sort(IngredientKind a, IngredientKind b) {
    const auto meal = [](IngredientKind kind) {
        return kind == IngredientKind::base || kind == IngredientKind::powder;
    };
    return a == b || (meal(a) && meal(b));
}

/// Crumbs and meals blend; what is fed by the piece (pellets, seeds, particles) is replaced only by pieces from half to
/// twice as large, for two sizes in place of one would not fish alike. **Source**: common practice, no source.
bool same_calibre(const Ingredient& gone, const Ingredient& other) {
    if (!is_fed_by_the_piece(gone.kind) || !gone.particle_size.known() || !other.particle_size.known()) return true;
    return other.particle_size.value <= most_calibre * gone.particle_size.value &&
           gone.particle_size.value <= most_calibre * other.particle_size.value;
}

/// Finds what may stand in, compares, and tells.
class Swap {
public:
    Swap(const Shelf& shelf, const Recipe& recipe, const SwapRequest& request, LinearSolver& solver)
        : shelf_(shelf), recipe_(recipe), request_(request), solver_(solver), mix_(resolve_as_made(recipe, shelf)) {}

    SwapAnswer run() {
        part_the_mix();
        find_stand_ins();
        weigh_aspects();
        const std::vector<MatchPart> parts = match_parts();
        const Match match = closest_with_few(parts, rest_.size(), request_.at_most, solver_);
        if (!match.found) throw std::logic_error("the solver found no match");
        SwapAnswer answer =
            swapped_mix(shelf_, recipe_, mix_, removed_, swapped_solids(match), request_.usual_currency);
        answer.distance = match.distance;
        answer.least_distance = closest_match(parts, solver_).distance;
        tell_changes(match, answer);
        return answer;
    }

private:
    void part_the_mix() {
        std::vector<std::string> gone;
        for (const std::string& without : request_.without) gone.push_back(dry_part_called(without));
        for (const SolidPart& part : mix_.solids) {
            const bool is_gone = std::find(gone.begin(), gone.end(), part.ingredient.name) != gone.end();
            (is_gone ? removed_ : rest_).push_back(part);
        }
    }

    /// An additive of that very name comes before a dry part that is only said so.
    [[nodiscard]] std::string dry_part_called(const std::string& without) const {
        std::vector<std::string> dry, additives;
        for (const SolidPart& part : mix_.solids) dry.push_back(part.ingredient.name);
        for (const LiquidPart& part : mix_.liquids) additives.push_back(part.ingredient.name);
        for (const ResolvedDose& dose : mix_.doses) additives.push_back(dose.ingredient.name);
        const auto is_it = [&](const std::string& name) { return folded_name(name) == folded_name(without); };
        const bool additive = std::any_of(additives.begin(), additives.end(), is_it);
        const SaidName said = additive ? SaidName{} : said_name(without, dry);
        if (said.name) return *said.name;
        if (additive || (said.several.empty() && said_name(without, additives).name))
            throw UsageError("not-a-dry-part", in_quotes(without) + " is dosed into the mix and is no dry part of it",
                             "a swap is for dry parts; leave the additive out, or dose another: baitwright dose");
        throw NotFound(
            fault_of_name(without, dry,
                          {"not-in-the-mix", "there is no " + in_quotes(without) + " in " + in_quotes(mix_.name),
                           "see what it holds with: baitwright recipe show " + in_quotes(mix_.name)}));
    }

    [[nodiscard]] bool may_stand_in(const Ingredient& ingredient) const {
        const auto is_it = [&](const std::string& name) { return folded_name(name) == folded_name(ingredient.name); };
        if (request_.from && std::none_of(request_.from->begin(), request_.from->end(), is_it)) return false;
        const auto in_mix = [&](const SolidPart& part) { return part.ingredient.name == ingredient.name; };
        if (std::any_of(mix_.solids.begin(), mix_.solids.end(), in_mix)) return false;
        return std::any_of(removed_.begin(), removed_.end(), [&](const SolidPart& part) {
            return same_sort(part.ingredient.kind, ingredient.kind) && same_calibre(part.ingredient, ingredient);
        });
    }

    /// As what it stands in for is: soaked where all of that is.
    [[nodiscard]] Preparation preparation() const {
        const bool soaked = std::all_of(removed_.begin(), removed_.end(),
                                        [](const SolidPart& part) { return part.prepare == Preparation::soaked; });
        return soaked ? Preparation::soaked : Preparation::as_bought;
    }

    void find_stand_ins() {
        for (const std::string& name : shelf_.ingredient_names()) {
            const auto ingredient = shelf_.find_ingredient(name);
            if (ingredient && is_solid(ingredient->kind) && !is_raw_seed(*ingredient) && may_stand_in(*ingredient))
                stand_ins_.push_back({*ingredient, preparation(), 0});
        }
        if (stand_ins_.empty()) refuse_none(place() + " holds nothing of its sort that is not in the mix already");
    }

    [[nodiscard]] std::string place() const { return request_.from ? "the shed" : "the library"; }

    [[noreturn]] void refuse_none(const std::string& why) const {
        std::string gone;
        for (const SolidPart& part : removed_) gone += (gone.empty() ? "" : " and ") + in_quotes(part.ingredient.name);
        throw Error(FaultClass::answer_is_no,
                    Fault{"nothing-to-swap-in", "nothing can stand in for " + gone + ": " + why,
                          request_.from ? "leave --from-stock out to look through the whole library"
                                        : "put something like it into the library: baitwright ingredient add"});
    }

    /// Compared is what is known of all that ran out, and of the rest where that may move. A stand-in of which
    /// something compared is not known is left out; where that leaves none, only what is known of all of them is
    /// compared.
    void weigh_aspects() {
        const std::size_t count = likeness_aspects().size();
        std::vector<SolidPart> must_know = removed_;
        if (request_.rest_may_move > 0) must_know.insert(must_know.end(), rest_.begin(), rest_.end());
        compared_.assign(count, true);
        for (const SolidPart& part : must_know) {
            const auto terms = likeness_terms(part.ingredient, part.prepare);
            for (std::size_t k = 0; k < count; ++k) compared_[k] = compared_[k] && terms[k].has_value();
        }
        const auto lacks = [&](const SolidPart& part) {
            const auto terms = likeness_terms(part.ingredient, part.prepare);
            for (std::size_t k = 0; k < count; ++k)
                if (compared_[k] && !terms[k]) return true;
            return false;
        };
        if (std::all_of(stand_ins_.begin(), stand_ins_.end(), lacks)) compare_only_what_all_have();
        stand_ins_.erase(std::remove_if(stand_ins_.begin(), stand_ins_.end(), lacks), stand_ins_.end());
        means_.assign(count, {0, 0});
        for (const SolidPart& part : mix_.solids) add_terms(part, part.share, means_);
    }

    void compare_only_what_all_have() {
        for (const SolidPart& part : stand_ins_) {
            const auto terms = likeness_terms(part.ingredient, part.prepare);
            for (std::size_t k = 0; k < terms.size(); ++k) compared_[k] = compared_[k] && terms[k].has_value();
        }
    }

    /// Adds a share of a part to the sums of every aspect; what is not known of it counts as the mean of the others.
    static void add_terms(const SolidPart& part, double share, std::vector<PropertyTerms>& sums) {
        const auto terms = likeness_terms(part.ingredient, part.prepare);
        for (std::size_t k = 0; k < sums.size(); ++k) {
            if (!terms[k]) continue;
            sums[k].amount += share * terms[k]->amount;
            sums[k].weight += share * terms[k]->weight;
        }
    }

    [[nodiscard]] MatchPart match_part(const SolidPart& part, Bounds share) const {
        MatchPart match{share, {}};
        const auto terms = likeness_terms(part.ingredient, part.prepare);
        for (std::size_t k = 0; k < terms.size(); ++k) {
            if (!compared_[k] || !(means_[k].weight > 0)) continue;
            const double mean = means_[k].amount / means_[k].weight;
            const double away = terms[k] ? (terms[k]->amount - mean * terms[k]->weight) / means_[k].weight : 0;
            match.differences.push_back(away / likeness_aspects()[k].step);
        }
        return match;
    }

    [[nodiscard]] std::vector<MatchPart> match_parts() const {
        std::vector<MatchPart> parts;
        for (const SolidPart& part : rest_)
            parts.push_back(match_part(
                part, {part.share * (1 - request_.rest_may_move), part.share * (1 + request_.rest_may_move)}));
        for (const SolidPart& part : stand_ins_) parts.push_back(match_part(part, {0, 1}));
        return parts;
    }

    [[nodiscard]] std::vector<SolidPart> swapped_solids(const Match& match) const {
        std::vector<SolidPart> solids = rest_;
        for (std::size_t i = 0; i < rest_.size(); ++i) solids[i].share = match.shares[i];
        for (std::size_t i = 0; i < stand_ins_.size(); ++i) {
            const double share = match.shares[rest_.size() + i];
            if (share <= least_share) continue;
            solids.push_back(stand_ins_[i]);
            solids.back().share = share;
        }
        sort_stably(solids.begin() + static_cast<std::ptrdiff_t>(rest_.size()), solids.end(),
                    [](const SolidPart& a, const SolidPart& b) { return a.share > b.share; });
        return solids;
    }

    void tell_changes(const Match& match, SwapAnswer& answer) const {
        std::vector<PropertyTerms> sums(means_.size(), {0, 0});
        for (const SolidPart& part : swapped_solids(match)) add_terms(part, part.share, sums);
        for (std::size_t k = 0; k < sums.size(); ++k) {
            const LikenessAspect& aspect = likeness_aspects()[k];
            if (!compared_[k]) {
                answer.not_compared.emplace_back(aspect.name);
                continue;
            }
            if (!(means_[k].weight > 0) || !(sums[k].weight > 0)) continue;
            const double was = means_[k].amount / means_[k].weight, is = sums[k].amount / sums[k].weight;
            answer.changes.push_back(
                {std::string(aspect.name), std::string(aspect.symbol), was, is, std::abs(is - was) / aspect.step});
        }
    }

    const Shelf& shelf_;
    const Recipe& recipe_;
    const SwapRequest& request_;
    LinearSolver& solver_;
    ResolvedMix mix_;
    std::vector<SolidPart> removed_, rest_, stand_ins_;
    std::vector<bool> compared_;
    std::vector<PropertyTerms> means_;  // of the mix: both sums of each aspect
};

}  // namespace

SwapAnswer swap_ingredient(const Shelf& shelf, const Recipe& recipe, const SwapRequest& request, LinearSolver& solver) {
    return Swap(shelf, recipe, request, solver).run();
}

}  // namespace baitwright
