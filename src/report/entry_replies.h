#pragma once

#include <functional>

#include "bait/blend_spec.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "bait/venue.h"
#include "report/reply.h"

/// What is said of the entries of a library: of all of one kind in a list, and everything that is known of one.
namespace baitwright {

/// Gives one ingredient after the other, so that a large library need not be at hand as a whole.
using EachIngredient = std::function<void(const std::function<void(const Ingredient&)>& take)>;

Reply ingredient_list_reply(EachIngredient each);
Reply ingredient_reply(Ingredient ingredient);
Reply recipe_list_reply(std::vector<Recipe> recipes);
Reply recipe_reply(Recipe recipe);
Reply strategy_list_reply(std::vector<Strategy> strategies);
Reply strategy_reply(Strategy strategy);
Reply venue_list_reply(std::vector<Venue> venues);
Reply venue_reply(Venue venue);
Reply blend_list_reply(std::vector<BlendSpec> blends);
Reply blend_spec_reply(BlendSpec blend);

}  // namespace baitwright
