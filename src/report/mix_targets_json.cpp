#include "report/mix_targets_json.h"

#include <fmt/format.h>

#include "bait/kitchen_rounding.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/shape_text.h"

namespace baitwright {

namespace {

Json target_additives_json(const MixAnswer& answer, const TargetAnswer& target) {
    Json additives = Json::array();
    for (std::size_t i = 0; i < target.additives.size(); ++i)
        additives.push_back({{"name", answer.additives[i].name},
                             {"mass_g", target.additives[i].in(gram)},
                             {"let_down_g", target.let_down_additives[i].in(gram)}});
    return additives;
}

std::string size_of_portion(const PortionsAnswer& portions) {
    return portions.diameter > Length{} ? fmt::format("{:.6g} mm", portions.diameter.in(millimetre))
                                        : fmt::format("{:.6g} ml", portions.each.in(millilitre));
}

}  // namespace

Json targets_json(const MixAnswer& answer) {
    Json targets = Json::array();
    for (const TargetAnswer& target : answer.targets)
        targets.push_back({{"form", target.portions.called},
                           {"count", target.portions.count},
                           {"size", size_of_portion(target.portions)},
                           {"volume_ml", target.portions.each.in(millilitre)},
                           {"feel", target.feel},
                           {"wetness", double(target.wetness)},
                           {"state", name_of(target.state)},
                           {"dry_mass_g", target.dry_mass.in(gram)},
                           {"water_g", target.water.in(gram)},
                           {"water_low_g", target.water_range.low.in(gram)},
                           {"water_high_g", target.water_range.high.in(gram)},
                           {"wet_mass_g", target.wet_mass.in(gram)},
                           {"wet_volume_ml", target.wet_volume.in(millilitre)},
                           {"take_g", target.take.in(gram)},
                           {"let_down_water_g", target.let_down_water.in(gram)},
                           {"let_down_low_g", target.let_down_range.low.in(gram)},
                           {"let_down_high_g", target.let_down_range.high.in(gram)},
                           {"mass_each_g", target.portions.mass_each.in(gram)},
                           {"count_low", double(target.count_range.low)},
                           {"count_high", double(target.count_range.high)},
                           {"additives", target_additives_json(answer, target)}});
    return targets;
}

void add_target_rows(const MixAnswer& answer, Rows& rows) {
    for (const TargetAnswer& target : answer.targets) {
        const std::string name = portions_text(target.portions) + ", " + target.feel;
        rows.push_back({"target", name, number_text(target.wet_mass.in(gram)),
                        number_text(target.wet_volume.in(millilitre)), number_text(target.dry_mass / answer.dry_mass),
                        "", "", "", ""});
        if (!(target.let_down_water > Mass{})) continue;
        const std::string water = number_text(target.let_down_water.in(gram));
        rows.push_back({"water, let down", name, water, water, "", "", "", "",
                        number_text(kitchen_water(target.let_down_water).in(gram))});
    }
}

}  // namespace baitwright
