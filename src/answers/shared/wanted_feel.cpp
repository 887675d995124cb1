#include "answers/shared/wanted_feel.h"

#include "bait/wetness.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"

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
    if (const Feel* found = find_feel(feels, *feel)) return {found->name, found->aim};
    std::vector<std::string> names;
    std::string listed;
    for (const Feel& one : feels) {
        names.push_back(one.name);
        listed += (listed.empty() ? "" : ", ") + one.name;
    }
    const std::string hint = did_you_mean(*feel, names);
    throw UsageError("unknown-feel", "no feel is called '" + *feel + "'",
                     hint.empty() ? "the feels are: " + listed : hint);
}

}  // namespace baitwright
