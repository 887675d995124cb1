#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "bait/wetted_mix.h"

/// When feed falls apart in the water. Everything here is a default from memory, within a factor of two or three; a
/// bucket test or a look into clear water replaces it.
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

/// How long a ball holds: t0(h) (D/60 mm)^2 exp(sum s b) x squeeze, t0 = 3, 90, 400 s at h = 0.95, 1.20, 1.40,
/// log-linear, flat above; squeeze 0.5, 1, 2 for light, firm, hard. A factor of 2.5 either way.
/// **Valid for**: h from 0.85, below which no ball can be made. **Test**: `tests/bait/break_up_test.cpp`.
Time ball_holds(Ratio wetness, Length diameter, Ratio binder, Squeeze squeeze);

/// How deep a cupful breaks, in its own diameters (of the sphere of its volume): 1 below h 0.9, 4 at 1.2, 7 from 1.6 to
/// 1.85, 2 beyond 2, linear between. A 250 ml soft cup: 0.55 m. Within a factor of 1.5.
Ratio cup_breaks_after(Ratio wetness);

/// The sphere of that volume.
Length diameter_of(Volume volume);

}  // namespace baitwright
