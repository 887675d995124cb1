#pragma once

#include <string>
#include <vector>

#include "answers/plan/plan_answer.h"
#include "answers/strategy/feed_need.h"
#include "report/json.h"

/// Damp mix from the cold or the freezer, as a person reads of it.
namespace baitwright {

/// "600 g from the freezer, thawed", "200 g from the cold".
std::string kept_amount(const KeptUse& use);

/// What to do with it at the bench: "riddle it, stir in about 20 ml of water to soft, and use it first".
std::string kept_handling(const KeptUse& use);

/// Of each tub in a batch how much there is and what to do with it, each a sentence behind a blank.
std::string kept_in_batch(const PlannedBatch& batch);

Mass kept_mass(const std::vector<KeptUse>& kept);

/// That it is used first and costs nothing again, and what to mind; empty where none is used.
std::string kept_text(const std::vector<KeptUse>& kept);

/// {name, mass_g, state, feel, fed_at, dry_g, water_g, more_water_g, best_before} of each.
Json kept_json(const std::vector<KeptUse>& kept);

}  // namespace baitwright
