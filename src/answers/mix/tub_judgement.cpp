#include "answers/mix/tub_judgement.h"

#include <algorithm>

#include "quantities/units.h"

namespace baitwright {

namespace {

/// Less than a hand can tell: 1 % of the dry mix, or a spoonful. Common practice, no source.
Mass hand_tells(Mass dry_mass) {
    return std::max(5.0 * gram, 0.01 * dry_mass);
}

/// Between the feels beside it. The driest of all begins as far below its aim as it ends above, for a tub with a
/// spoonful of water in it is not right for anything; and so the wettest ends.
bool inside_band(const std::vector<Feel>& feels, const WantedFeel& wanted, Ratio settled) {
    if (wanted.by != WantedFeel::By::feel || !(settled > 0) || settled > wettest) return false;
    const Feel& feel = feel_of(feels, settled);
    if (feel.name != wanted.name) return false;
    if (feels.size() > 1 && feel.name == feels.front().name) return settled >= 2 * feel.aim - feel.below;
    if (feels.size() > 1 && feel.name == feels.back().name)
        return settled <= 2 * feel.aim - feels[feels.size() - 2].below;
    return true;
}

}  // namespace

TubJudgement judge_tub(const MixNumbers& numbers, const std::vector<Feel>& feels, const WantedFeel& wanted,
                       Mass dry_mass, Ratio water_in) {
    TubJudgement judged;
    const WettedMix as_it_is = wet(numbers, 0.0, water_in);
    const MixWaterNeed& need = as_it_is.need;
    if (!(need.wetted_share > 0)) return judged;
    judged.takes_water = true;
    judged.settled = wetness_at(need.marks, as_it_is.wetting_present / need.wetted_share);
    if (inside_band(feels, wanted, judged.settled)) return judged;
    const WettedMix righted = wet(numbers, wanted.wetness, water_in);
    const Mass water = righted.water * dry_mass;
    const double ratio = added_water_ratio(need.marks, wanted.wetness);  // what the feel asks for
    Mass dry_mix;
    if (righted.too_wet && ratio > 0) dry_mix = (as_it_is.wetting_present / ratio - need.wetted_share) * dry_mass;
    if (dry_mix > hand_tells(dry_mass)) {
        judged.needs = TubNeeds::dry_mix;
        judged.dry_mix = dry_mix;
    } else if (water > hand_tells(dry_mass)) {
        judged.needs = TubNeeds::water;
        judged.water = water;
    }
    return judged;
}

}  // namespace baitwright
