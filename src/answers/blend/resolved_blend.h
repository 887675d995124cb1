#pragma once

#include <vector>

#include "bait/blend_spec.h"
#include "bait/ingredient.h"
#include "bait/shelf.h"

namespace baitwright {

/// A blend with its candidates found and priced.
struct ResolvedBlend {
    BlendSpec spec;
    Mass batch;
    std::vector<Ingredient> ingredients;  ///< of the candidates, in their order
    std::vector<double> prices;           ///< of a kilogram, in unrounded minor units
    const Currency* currency = nullptr;
};

/// Finds and prices the candidates. Throws InputError with all faults, their subject "candidate 2" or "feel": a name or
/// feel that the shelf does not know, a liquid, a property that a limit is on and that is not known, no price, or none
/// in the currency that the blend is priced in (`answer_currency`; `usual` may be null).
ResolvedBlend resolve_blend(const BlendSpec& spec, const Shelf& shelf, Mass batch, const Currency* usual = nullptr);

/// What so much of a candidate costs, in unrounded minor units: by the price in the spec, or as `mix` prices it.
double candidate_cost(const ResolvedBlend& blend, std::size_t candidate, Mass mass);

/// The terms of a candidate in a property, price and all.
PropertyTerms candidate_terms(const ResolvedBlend& blend, MixProperty property, std::size_t candidate);

}  // namespace baitwright
