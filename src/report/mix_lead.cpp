#include "report/mix_lead.h"

#include <fmt/format.h>

#include <algorithm>

#include "answers/mix/mix_doubt.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/mix_targets_text.h"

namespace baitwright {

namespace {

/// Pellets with nothing else: what covers them, and how long, where all of them take as long.
std::string soaking_lead(const MixAnswer& answer) {
    Mass pour;
    const PartSoak* soak = nullptr;
    int soaked = 0;
    for (const PartAnswer& part : answer.parts) {
        if (!part.soak) continue;
        pour += part.soak->pour;
        soak = &*part.soak;
        ++soaked;
    }
    if (!soaked) return {};
    std::string text = shown_water(jug_water(pour)) + " over the pellets";
    if (soaked == 1)
        text +=
            fmt::format(", soak {}, drain, and stand {}", shown_soak_time(soak->soak), shown_soak_time(soak->stand));
    return text + ".";
}

/// "285 ml, rest 20 min, then creep to about 400 ml (9 times in 10: 310 to 530 ml)", in each tub of several.
std::string pouring_lead(const MixAnswer& answer) {
    const double tubs = answer.tubs.count;
    const std::string each = answer.tubs.count > 1 ? fmt::format(" into each of {} tubs", answer.tubs.count) : "";
    const Mass aim = jug_water(answer.tubs.water_each);
    if (!answer.doubt) return shown_water(aim) + each + ".";
    const Mass first = jug_water(answer.doubt->first_pour / tubs);
    const std::string pour = first < 1.0 * gram ? "nothing yet: riddle and feel it first"
                                                : shown_water(first) + each + ", rest " + shown_time(answer.rest);
    std::string text = fmt::format("{}, then creep to about {}", pour, shown_water(std::max(first, aim)));
    const Mass low = jug_water(answer.doubt->water.low / tubs), high = jug_water(answer.doubt->water.high / tubs);
    if (high > 1.02 * low) text += fmt::format(" (9 times in 10: {})", shown_water(low, high));
    if (lets_down(answer)) text += " for " + answer.feel;
    return text + ".";
}

/// With water in it already: two thirds of what is lacking, as `water` says it.
std::string topping_up_lead(const MixAnswer& answer) {
    return fmt::format("about {} more: two thirds of it, rest {}, then the last by feel.",
                       shown_water(jug_water(answer.water_to_add)), shown_time(answer.rest));
}

}  // namespace

void tell_lead(Told& told, const MixAnswer& answer) {
    if (answer.dry_to_add > Mass{}) {
        told.line("Stir in",
                  fmt::format("about {} more of the dry mix{}{}, and no water.",
                              shown_mass(scale_mass(answer.dry_to_add)), answer.tubs.count > 1 ? " in all" : "",
                              answer.all_parts_take_water ? "" : ", leaving out what takes no water"));
    } else if (answer.right_as_it_stands) {
        told.line("Pour", "nothing: it is right as it stands.");
    } else if (answer.soaked_alone) {
        if (const std::string text = soaking_lead(answer); !text.empty()) told.line("Pour", text);
    } else if (answer.water_to_add > Mass{}) {
        told.line("Pour", answer.water_already_in > Mass{} ? topping_up_lead(answer) : pouring_lead(answer));
    }
}

}  // namespace baitwright
