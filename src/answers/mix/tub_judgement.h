#pragma once

#include <vector>

#include "answers/shared/wanted_feel.h"
#include "bait/wetted_mix.h"

namespace baitwright {

/// What puts a tub right that has water in it.
enum class TubNeeds { nothing, water, dry_mix };

/// How a tub stands once it has settled, and what is asked for: nothing inside the band of the feel that is wanted, nor
/// where it is less than a hand can tell; else the water or the dry mix that brings it to the feel's aim.
struct TubJudgement {
    Ratio settled;             ///< its wetness; may be beyond the scale
    bool takes_water = false;  ///< anything of the mix does; else it has no wetness
    TubNeeds needs = TubNeeds::nothing;
    Mass water;    ///< to add; else 0
    Mass dry_mix;  ///< to stir in, of the parts that take water; else 0
};

/// `water_in` is per gram of the dry mass. Of a mix that takes no water nothing can be asked: `needs` is nothing, too.
TubJudgement judge_tub(const MixNumbers& numbers, const std::vector<Feel>& feels, const WantedFeel& wanted,
                       Mass dry_mass, Ratio water_in);

}  // namespace baitwright
