#include "answers/shared/take_out.h"

#include <algorithm>

#include "quantities/suggestion.h"

namespace baitwright {

bool is_named(const std::vector<std::string>& names, const std::string& name) {
    const std::string folded = folded_name(name);
    return std::any_of(names.begin(), names.end(), [&](const std::string& one) { return folded_name(one) == folded; });
}

bool take_out(ResolvedMix& mix, const std::vector<std::string>& without) {
    double left = 0;
    const auto is_gone = [&](const auto& one) { return is_named(without, one.ingredient.name); };
    mix.solids.erase(std::remove_if(mix.solids.begin(), mix.solids.end(), is_gone), mix.solids.end());
    mix.liquids.erase(std::remove_if(mix.liquids.begin(), mix.liquids.end(), is_gone), mix.liquids.end());
    mix.doses.erase(std::remove_if(mix.doses.begin(), mix.doses.end(), is_gone), mix.doses.end());
    for (const SolidPart& part : mix.solids) left += part.share;
    if (!(left > 0)) return false;
    for (SolidPart& part : mix.solids) part.share = part.share / left;
    for (LiquidPart& part : mix.liquids) part.per_dry = part.per_dry / left;
    return true;
}

}  // namespace baitwright
