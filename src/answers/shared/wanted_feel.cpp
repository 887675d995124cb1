#include "answers/shared/wanted_feel.h"

#include "bait/wetness.h"
#include "quantities/fault.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"

namespace baitwright {

WantedFeel wanted_feel(const std::vector<Feel>& feels, const Feel& own, const std::optional<std::string>& feel,
                       const std::optional<Ratio>& wetness) {
    if (feel && wetness)
        throw UsageError("two-feels", "a feel and a wetness were both given", "give one of --feel and --wetness");
    if (wetness) {
        if (!(*wetness > 0 && *wetness <= wettest))
            throw UsageError("out-of-range", "a wetness must be above 0 and not above 3",
                             "1 just holds in a squeezed hand, 2 will not stand");
        return {feel_of(feels, *wetness).name, *wetness, WantedFeel::By::number};
    }
    if (!feel) return {own.name, own.aim};
    std::vector<std::string> names;
    names.reserve(feels.size());
    for (const Feel& one : feels) names.push_back(one.name);
    const SaidName said = said_name(*feel, names);
    if (!said.name)
        throw UsageError(fault_of_name(
            *feel, names,
            {"unknown-feel", "no feel is called '" + *feel + "'", "the feels are: " + joined(names, ", ")}));
    const Feel* found = find_feel(feels, *said.name);
    return {found->name, found->aim};
}

}  // namespace baitwright
