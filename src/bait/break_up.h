#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "bait/wetted_mix.h"

/// When feed falls apart in the water. Everything here is a default of ours, within a factor of two or three; a bucket
/// test or a look into clear water replaces it.
namespace baitwright {

/// How hard a ball is squeezed.
enum class Squeeze { light, firm, hard };
inline constexpr std::array<std::string_view, 3> squeeze_names{"light", "firm", "hard"};
constexpr std::string_view name_of(Squeeze squeeze) {
    return squeeze_names[static_cast<std::size_t>(squeeze)];
}
std::optional<Squeeze> find_squeeze(std::string_view name);

/// The binder number of a mix: sum s_i b_i over the solids, liquids and powders by their grams per gram dry.
struct BinderShare {
    Ratio share;   ///< grams per gram of dry mass
    Ratio binder;  ///< b
};
Ratio binder_sum(std::span<const BinderShare> parts);

/// How feed sits together when it goes in.
enum class Hold {
    squeezed,  ///< a ball, by how hard it was squeezed
    heaped,    ///< a cupful: filled in and levelled, not pressed
};

/// How long a ball of 60 mm, squeezed firm and without binder, holds under water: 0.1, 3, 90, 400, 400, 45, 1 s at h =
/// 0.70, 0.95, 1.20, 1.40, 1.45, 1.70, 2.10, log-linear between and beyond the dry end; nothing from slop (2.10) on. It
/// is the one strength of a feed: all that breaks, breaks by it.
/// **Source**: ours. Beyond tacky it falls exponentially, as the undrained strength of soil does with the liquidity
/// index (Wroth & Wood 1978, from memory), but steeper, so that a soft level cup of 250 ml goes down 0.45 to 0.75 m
/// (common practice, no source). **Test**: `tests/bait/break_up_test.cpp`.
Time strength(Ratio wetness);

/// How long a portion holds: strength(h) (D/60 mm)^2 x exp(binder) x 0.5, 1, 2 for light, firm, hard; of an unpressed
/// heap 0.020 of a firm ball's, by the root of exp(binder), for the grains of a heap hardly touch. A factor of 2.5
/// either way for a ball, 1.5 for a heap. **Test**: `tests/bait/break_up_test.cpp`.
Time holds(Hold how, Ratio wetness, Length diameter, Ratio binder, Squeeze squeeze);

/// The share of a portion that goes as lumps once it has broken, t/(t + 3 s) with t = strength(h) exp(binder); the
/// rest are single grains. A lump slakes as a firmly squeezed ball of its size. **Source**: ours, so that a soft cup is
/// half down in 4 m after 45 to 70 s (common practice, no source).
Ratio bound_share(Ratio wetness, Ratio binder);

/// The sphere of that volume.
Length diameter_of(Volume volume);

}  // namespace baitwright
