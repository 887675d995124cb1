#include "report/shape_text.h"

#include <fmt/format.h>

#include "bait/kitchen_rounding.h"
#include "quantities/units.h"
#include "report/display.h"

namespace baitwright {

std::string portions_text(const PortionsAnswer& portions) {
    return fmt::format("{} {}{} of {}", portions.count, portions.called, portions.count == 1 ? "" : "s",
                       portions.diameter > Length{} ? fmt::format("{:.0f} mm", portions.diameter.in(millimetre))
                                                    : shown_volume(portions.each));
}

std::string shape_text(const PortionsAnswer& portions, MixState state, int tubs) {
    const std::string mass = shown_mass(kitchen_mass(portions.mass_each));
    const std::string ones = portions_text(portions);
    if (state == MixState::squeezed)
        return fmt::format("{} {}, about {} each.", tubs > 1 ? "From all the tubs squeeze" : "Squeeze", ones, mass);
    return fmt::format("{} {} level {}, about {} each; do not press.", tubs > 1 ? "From all the tubs fill" : "Fill",
                       portions.count, ones.substr(ones.find(' ') + 1), mass);
}

}  // namespace baitwright
