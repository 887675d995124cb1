#include "report/remedy_text.h"

#include <fmt/format.h>

#include "quantities/units.h"
#include "report/display.h"

namespace baitwright {

std::string remedy_text(const Remedy& remedy) {
    if (remedy.dry_mix > Mass{})
        return fmt::format("Too wet for {}. Stir in about {}{} more of the same dry mix{}, then let it rest.",
                           remedy.feel, shown_mass(scale_mass(remedy.dry_mix)),
                           in_brackets({other_mass(remedy.dry_mix)}),
                           remedy.all_parts_take_water ? "" : ", leaving out what takes no water");
    if (remedy.water > Mass{})
        return fmt::format("For {} add about {} of water: two thirds of it first, rest, then the last by feel.",
                           remedy.feel, shown_water(jug_water(remedy.water)));
    return fmt::format("It is right for {}: add nothing.", remedy.feel);
}

}  // namespace baitwright
