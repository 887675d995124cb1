#pragma once

#include "bait/blend_spec.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "bait/venue.h"
#include "report/reply.h"

/// What is said of the entries of a library: of all of one kind in a list, and everything that is known of one.
namespace baitwright {

Reply ingredient_list_reply(std::vector<Ingredient> ingredients);
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
