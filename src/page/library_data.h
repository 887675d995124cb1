#pragma once

#include <string>
#include <vector>

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "bait/venue.h"
#include "report/json.h"

namespace baitwright {

/// What a page carries of a library.
struct CarriedLibrary {
    std::vector<Ingredient> ingredients;
    std::vector<Recipe> recipes;
    std::vector<Strategy> strategies;
    std::vector<Venue> venues;
    std::vector<Feel> feels;
};

/// {sources, ingredients, mixes, strategies, venues, feels}, in short records (`ingredient_data.h`, `strategy_data.h`):
/// a phone reads them in a tenth of the time that TOML takes, and needs no reader of TOML.
Json library_data(const CarriedLibrary& library);

/// The same entries, number for number; of an ingredient what was stated, for the shelf to complete. Throws where the
/// data are not whole.
CarriedLibrary library_in(const Json& data);

}  // namespace baitwright
