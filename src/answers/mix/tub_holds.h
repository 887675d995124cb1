#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "answers/mix/mix_doubt.h"
#include "answers/mix/tub_judgement.h"
#include "answers/mix/tub_request.h"
#include "bait/resolved_mix.h"

namespace baitwright {

/// The room that a settled tub takes, by `MixState`; nothing for a state that it is too dry or too wet for.
struct TubRoom {
    Mass wet_mass;
    std::array<std::optional<Volume>, mix_state_names.size()> volumes;

    [[nodiscard]] const std::optional<Volume>& in(MixState state) const {
        return volumes[static_cast<std::size_t>(state)];
    }
};

/// How many whole cups, feeders or balls it makes.
struct TubMakes {
    std::string called;  ///< "cup", "feeder", "ball"
    Volume each;
    Length diameter;  ///< of a ball; else 0
    int count = 0;
    int low = 0, high = 0;  ///< 9 times in 10
    Mass mass_each;
};

/// A tub once it has settled, and so much of what it is of: where dry mix was stirred in, the mix is another.
struct SettledTub {
    ResolvedMix mix;
    WettedTub tub;
};

/// The tub as it stands.
SettledTub tub_as_it_stands(const ResolvedMix& mix, const WettedTub& tub, const TubJudgement& judged);
/// The same once what is asked for is in it: then it has the wetness wanted. What was dosed by the dry mix stays as it
/// was where dry mix is stirred in. Of a mix that takes no water: as it stands.
SettledTub tub_put_right(const ResolvedMix& mix, const WettedTub& tub, const TubJudgement& judged);

/// **Test**: what `mix` says of the same dry mix at the same wetness.
TubRoom room_of(const SettledTub& settled);

/// Of each that is asked for, from the draws that `mix` takes for its portions; those that the tub is too dry or too
/// wet for are left out.
std::vector<TubMakes> makes_of(const SettledTub& settled, const std::vector<TubPortion>& portions, std::uint64_t seed);

}  // namespace baitwright
