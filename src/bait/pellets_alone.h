#pragma once

#include "bait/mix_state.h"
#include "bait/recipe.h"
#include "bait/resolved_mix.h"
#include "bait/shelf.h"

/// Pellets with nothing else: they are soaked, drained and left to stand until they stick, not wetted like meal.
namespace baitwright {

/// Whether every solid of the mix is a pellet that soaks.
bool is_pellets_alone(const ResolvedMix& mix);

/// Pellets alone, and all of them go in soaked.
bool is_soaked_alone(const ResolvedMix& mix);

/// Of a mix of pellets alone, all of it goes in soaked. Others are left as they are.
void soak_pellets_alone(ResolvedMix& mix);

/// The recipe opened up as it is made, where nothing is put in or left out for once: pellets alone are soaked. Throws
/// what `resolve` throws.
ResolvedMix resolve_as_made(const Recipe& recipe, const Shelf& shelf);

/// Throws UsageError "soaked-alone" for pellets alone, of which a question of feel has no answer.
void refuse_pellets_alone(const ResolvedMix& mix);

/// What soaked pellets keep, inside and on their surface: grams of water per gram dry.
Ratio water_kept_soaked(const ResolvedMix& mix);

/// The wetness at which soaked pellets sit: poured they lie as dry ones do, pressed they hold like a firm mix.
/// **Source**: common practice, no source.
Ratio wetness_of_pellets(MixState state);

/// What stands in place of a feel.
inline constexpr const char* feel_of_pellets = "soaked";
/// In place of a feel, of live and cooked feed, which is not wetted.
inline constexpr const char* feel_as_it_is = "as it is";

}  // namespace baitwright
