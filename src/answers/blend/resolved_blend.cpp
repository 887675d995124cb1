#include "answers/blend/resolved_blend.h"

#include "bait/feel.h"
#include "bait/one_currency.h"
#include "bait/pricing.h"
#include "bait/raw_seed.h"
#include "bait/recipe_names.h"
#include "bait/strategy.h"
#include "bait/suggesting_shelf.h"
#include "quantities/in_quotes.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// Resolves candidate by candidate and gathers what is wrong.
class BlendResolver {
public:
    BlendResolver(const BlendSpec& spec, const Shelf& shelf, Mass batch, const Currency* usual)
        : shelf_(shelf), suggesting_(shelf) {
        blend_.spec = spec;
        blend_.batch = batch;
        for (const BlendCandidate& candidate : spec.candidates) found_.push_back(shelf_.find_ingredient(candidate.of));
        take_currency(usual);
    }

    ResolvedBlend run() {
        const BlendSpec& spec = blend_.spec;
        if (!spec.feel.empty() && !find_feel(shelf_.feels(), spec.feel))
            faults_.push_back(unknown_feel(spec.feel, shelf_));
        for (std::size_t i = 0; i < spec.candidates.size(); ++i)
            add(spec.candidates[i], std::move(found_[i]), "candidate " + std::to_string(i + 1));
        if (!faults_.empty()) throw InputError(std::move(faults_));
        return std::move(blend_);
    }

private:
    void refuse(const std::string& subject, std::string code, std::string message, std::string hint) {
        faults_.push_back({std::move(code), std::move(message), std::move(hint), subject});
    }

    void add(const BlendCandidate& candidate, std::optional<Ingredient> ingredient, const std::string& subject) {
        if (!ingredient) {
            faults_.push_back(unknown_part(candidate.of, subject, suggesting_.after(faults_.size())));
            return;
        }
        if (!is_solid(ingredient->kind)) {
            refuse(subject, "liquid-candidate", in_quotes(ingredient->name) + " is a liquid; a blend is of dry parts",
                   "take it out, and dose it into the mix once that is saved");
            return;
        }
        if (is_raw_seed(*ingredient)) {
            faults_.push_back(raw_seed_fault(*ingredient, suggesting_.after(faults_.size()), subject));
            return;
        }
        price(candidate, *ingredient, subject);
        check_properties(*ingredient, subject);
        blend_.ingredients.push_back(std::move(*ingredient));
    }

    void take_currency(const Currency* usual) {
        std::vector<PricedIn> priced;
        for (std::size_t i = 0; i < found_.size(); ++i) {
            const BlendCandidate& candidate = blend_.spec.candidates[i];
            if (candidate.price)
                priced.push_back({candidate.of, &candidate.price->currency()});
            else if (found_[i])
                add_currencies(priced, *found_[i]);
        }
        blend_.currency = answer_currency(priced, usual);
    }

    void price(const BlendCandidate& candidate, const Ingredient& ingredient, const std::string& subject) {
        const auto by_pack = exact_cost_minor(ingredient, 1.0 * kilogram, blend_.currency);
        const auto elsewhere = candidate.price ? PricedElsewhere{ingredient.name, *candidate.price}
                                               : priced_elsewhere(ingredient, blend_.currency);
        if (candidate.price ? !(candidate.price->currency() == *blend_.currency) : elsewhere.has_value())
            return refuse(subject, "other-currency", no_price_in(*blend_.currency, {*elsewhere}),
                          candidate.price ? "give its price here in " + std::string(blend_.currency->code)
                                          : "put all into one: " + convert_command(*blend_.currency));
        if (!candidate.price && !by_pack)
            return refuse(subject, "no-price", "no price is known for " + in_quotes(ingredient.name),
                          "say what a pack costs: baitwright price " + in_quotes(ingredient.name) +
                              " --pack 1kg --is \u00a31.40; or in a file of yours: price = \"\u00a31.40 per kg\"");
        blend_.prices.push_back(candidate.price ? static_cast<double>(candidate.price->minor()) : *by_pack);
    }

    void check_properties(const Ingredient& ingredient, const std::string& subject) {
        for (const BlendLimit& limit : blend_.spec.limits) {
            if (!limit.on || *limit.on == MixProperty::price || terms_of(*limit.on, ingredient)) continue;
            const std::string name(facts_of(*limit.on).name);
            refuse(subject, "unknown-property",
                   "the " + name + " of " + in_quotes(ingredient.name) + " is not known, and there is a limit on it",
                   "state it in the composition of an ingredient of your own, or take the candidate out");
        }
    }

    const Shelf& shelf_;
    const SuggestingShelf suggesting_;
    ResolvedBlend blend_;
    std::vector<std::optional<Ingredient>> found_;  // of the candidates
    std::vector<Fault> faults_;
};

}  // namespace

ResolvedBlend resolve_blend(const BlendSpec& spec, const Shelf& shelf, Mass batch, const Currency* usual) {
    return BlendResolver(spec, shelf, batch, usual).run();
}

double candidate_cost(const ResolvedBlend& blend, std::size_t candidate, Mass mass) {
    if (blend.spec.candidates[candidate].price) return blend.prices[candidate] * mass.in(kilogram);
    return *exact_cost_minor(blend.ingredients[candidate], mass, blend.currency);
}

PropertyTerms candidate_terms(const ResolvedBlend& blend, MixProperty property, std::size_t candidate) {
    if (property == MixProperty::price) return {blend.prices[candidate], 1};
    return *terms_of(property, blend.ingredients[candidate]);
}

}  // namespace baitwright
