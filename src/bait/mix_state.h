#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "quantities/quantity.h"

namespace baitwright {

/// How the wet mix sits.
enum class MixState {
    riddled,   ///< loose, through a riddle
    cupped,    ///< filled into a pot or cup and levelled
    squeezed,  ///< a ball
};

inline constexpr std::array<std::string_view, 3> mix_state_names{"riddled", "cupped", "squeezed"};
constexpr std::string_view name_of(MixState state) {
    return mix_state_names[static_cast<std::size_t>(state)];
}
std::optional<MixState> find_mix_state(std::string_view name);

/// The wetness a state needs, in closed limits: too dry it cannot be made, too wet it runs.
struct WetnessLimits {
    double lowest, highest;
};
WetnessLimits limits_of(MixState state);
bool can_be(MixState state, Ratio wetness);

/// Where nothing else is asked: riddled, but cupped once it is too wet for the riddle.
MixState usual_state(Ratio wetness);

}  // namespace baitwright
