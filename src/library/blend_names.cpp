#include "library/blend_names.h"

#include "bait/ingredient.h"
#include "bait/suggesting_shelf.h"
#include "quantities/suggestion.h"

namespace baitwright {

std::vector<Fault> unknown_candidates(const BlendSpec& spec, const Shelf& shelf) {
    std::vector<Fault> faults;
    const SuggestingShelf suggesting(shelf);
    for (std::size_t i = 0; i < spec.candidates.size(); ++i) {
        const std::string& of = spec.candidates[i].of;
        if (shelf.find_ingredient(of)) continue;
        const std::string hint = did_you_mean(of, suggesting.after(faults.size()).ingredient_names());
        faults.push_back({"unknown-ingredient", "no ingredient is called '" + of + "'",
                          hint.empty() ? "see them all with: baitwright ingredient list" : hint,
                          "candidate " + std::to_string(i + 1)});
    }
    return faults;
}

}  // namespace baitwright
