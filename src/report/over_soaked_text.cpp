#include "report/over_soaked_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "quantities/units.h"
#include "report/display.h"

namespace baitwright {

namespace {

std::string left_for(Time under_water) {
    const bool a_night = under_water >= 6.0 * hour && under_water <= 16.0 * hour;
    return a_night ? "overnight" : shown_soak_time(under_water);
}

/// What they are all through, or outside where the core still holds.
std::string what_they_are(const SoakedAnswer& soaked) {
    const std::string core = feel_of_uptake(soaked.drained.core);
    return core == feel_of_uptake(1.0) ? "mush" : "mush outside, " + core + " in the core";
}

std::string left_too_long_line(const SoakedAnswer& soaked, const SoakAnswer& answer) {
    const bool alone = answer.soaked.size() == 1 && answer.pumped.empty();
    return sentence(fmt::format(
        "{} {}: {}. Right is {} under water at {} (likely {}), then drained", alone ? "left" : soaked.name + ", left",
        left_for(soaked.soak.middle), what_they_are(soaked), shown_soak_time(soaked.right_soak->middle),
        shown_temperature(answer.water), shown_soak_time(soaked.right_soak->low, soaked.right_soak->high)));
}

}  // namespace

bool left_too_long(const SoakedAnswer& soaked) {
    return soaked.right_soak && soaked.uptake > over_soaked;
}

void tell_left_too_long(Told& told, const SoakAnswer& answer) {
    if (std::none_of(answer.soaked.begin(), answer.soaked.end(), left_too_long)) return;
    for (const SoakedAnswer& soaked : answer.soaked)
        if (left_too_long(soaked)) told.title(left_too_long_line(soaked, answer));
    told.line("Way out",
              "Feed it as slop, for a cloud; or stir in dry meal or crumb, a handful at a time, until it holds a "
              "squeeze, and use it for balls (common practice). Bin what smells sour.");
    told.gap();
}

std::vector<Warning> warnings_not_yet_told(const SoakAnswer& answer) {
    std::vector<Warning> rest = answer.warnings;
    if (answer.by_clock)
        rest.erase(std::remove_if(rest.begin(), rest.end(), [](const Warning& w) { return w.code == "over-soaked"; }),
                   rest.end());
    return rest;
}

}  // namespace baitwright
