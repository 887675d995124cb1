#include "bait/mix_state.h"

#include "bait/wetness.h"
#include "quantities/suggestion.h"

namespace baitwright {

std::optional<MixState> find_mix_state(std::string_view name) {
    const std::string folded = folded_name(name);
    for (std::size_t i = 0; i < mix_state_names.size(); ++i)
        if (folded == mix_state_names[i]) return static_cast<MixState>(i);
    return std::nullopt;
}

WetnessLimits limits_of(MixState state) {
    switch (state) {
        case MixState::riddled:
            return {0, 1.6};
        case MixState::squeezed:
            return {0.85, 1.6};
        default:
            return {0, wettest};
    }
}

bool can_be(MixState state, Ratio wetness) {
    constexpr double rounding = 1e-9;
    const WetnessLimits limits = limits_of(state);
    return wetness >= limits.lowest - rounding && wetness <= limits.highest + rounding;
}

MixState usual_state(Ratio wetness) {
    return can_be(MixState::riddled, wetness) ? MixState::riddled : MixState::cupped;
}

}  // namespace baitwright
