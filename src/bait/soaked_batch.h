#pragma once

#include "bait/ingredient.h"

/// Pellets with water in them: what they weigh and how much room they take. Used by a soak and by a mix that holds a
/// soaked batch.
namespace baitwright {

/// Usual: a batch takes up this share of its capacity under water. **Source**: common practice, no source.
inline constexpr double soaked_uptake = 0.40;
/// The film of water that clings to drained grains, g per g dry. **Source**: default, from memory.
inline constexpr double soaked_film = 0.03;

/// The room a gram of grains takes once they hold that much water (g per g): it fills their own pores first and swells
/// them after. v' = 1/envelope + max(0, water - (1/envelope - 1/skeleton)), with water at 1 ml/g.
SpecificVolume swollen_grain(Density envelope, Density skeleton, Ratio water_inside);

/// Covered with water, soaked and drained; or given just the water they are to take.
enum class SoakMethod { covered, measured };

/// A batch after a soak.
struct SoakedBatch {
    Mass dry;
    Mass inside;        ///< water taken up
    Mass film;          ///< water on the grains; none where it was measured
    Mass pour;          ///< water to cover them, or what they are to take
    Volume wet_volume;  ///< poured and levelled, drained
    [[nodiscard]] Mass wet() const { return dry + inside + film; }
};

/// `inside` is grams of water per gram dry. Covered: pour = what they take + 1.2 times the gaps between dry grains,
/// gaps = dry (1/loose - 1/envelope). Volume: the swollen grains lie as loosely as the dry ones.
/// **Valid for**: a completed pellet or expander. **Test**: `tests/bait/soaked_batch_test.cpp`; a pint of 2 mm pellets
/// makes 1.25 to 1.3 pints (common practice says 1.3 to 1.5).
SoakedBatch soaked_batch(const Ingredient& pellet, Mass dry, Ratio inside, SoakMethod method);

/// How a pellet feels at a place that holds that share of its capacity, in a word or two: "hard", "firm", "just soft",
/// "soft", "very soft", "mushy". **Source**: common practice, no source.
const char* feel_of_uptake(Ratio share_of_capacity);

/// Above this share on average pellets fall apart in the hand: over-soaked. **Source**: common practice, no source.
inline constexpr double over_soaked = 0.75;

}  // namespace baitwright
