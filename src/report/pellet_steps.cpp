#include <fmt/format.h>

#include "quantities/listed.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/mix_steps.h"
#include "report/shape_text.h"

namespace baitwright {

namespace {

/// "Pour 640 ml of water on plain micros; after 1 min drain them and let them stand 10 min, covered".
std::string soak_of(const PartAnswer& part) {
    return fmt::format("Pour {} of water on the {}. Drain after {}, then let them stand {}, covered, until they stick.",
                       shown_water(jug_water(part.soak->pour)), part.name, shown_soak_time(part.soak->soak),
                       shown_soak_time(part.soak->stand));
}

std::string dressing(const MixAnswer& answer) {
    std::vector<std::string> dressed;
    for (const AdditiveAnswer& additive : answer.additives)
        if (additive.mass > Mass{})
            dressed.push_back((additive.liquid ? shown_dose(additive.volume) : shown_dose(additive.mass)) + " of " +
                              additive.name);
    if (dressed.empty()) return "Turn them over. Wet outside? Dust them with a little fine meal.";
    return "Dress them with " + listed(dressed) + " and turn them over.";
}

std::string pressed(const PortionsAnswer& portions) {
    const std::string each = mass_of_each(portions);
    if (portions.diameter > Length{})
        return fmt::format("Squeeze {} {} of {:.0f} mm, {}.", portions.count, portions.count == 1 ? "ball" : "balls",
                           portions.diameter.in(millimetre), each);
    return fmt::format("Press {} {} of {} full, {}.", portions.count,
                       portions.count == 1 ? portions.called : portions.called + "s", shown_volume(portions.each),
                       each);
}

std::string portioned(const PortionsAnswer& portions, MixState state) {
    return state == MixState::squeezed ? pressed(portions) : shape_text(portions, state, 1);
}

}  // namespace

std::vector<std::string> pellet_steps(const MixAnswer& answer) {
    std::vector<std::string> steps;
    for (const PartAnswer& part : answer.parts)
        if (part.soak) steps.push_back(soak_of(part));
    steps.push_back(dressing(answer));
    for (const TargetAnswer& target : answer.targets) steps.push_back(portioned(target.portions, target.state));
    if (answer.portions)
        steps.push_back(portioned(*answer.portions, answer.state));
    else if (answer.targets.empty() && answer.state == MixState::squeezed)
        steps.emplace_back("Squeeze them into balls as you need them.");
    return steps;
}

}  // namespace baitwright
