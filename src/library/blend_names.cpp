#include "library/blend_names.h"

#include "bait/ingredient.h"
#include "bait/raw_seed.h"
#include "bait/suggesting_shelf.h"
#include "quantities/suggestion.h"

namespace baitwright {

std::vector<Fault> unfit_candidates(const BlendSpec& spec, const Shelf& shelf) {
    std::vector<Fault> faults;
    const SuggestingShelf suggesting(shelf);
    for (std::size_t i = 0; i < spec.candidates.size(); ++i) {
        const std::string& of = spec.candidates[i].of;
        if (const auto ingredient = shelf.find_ingredient(of)) {
            if (is_raw_seed(*ingredient))
                faults.push_back(
                    raw_seed_fault(*ingredient, suggesting.after(faults.size()), "candidate " + std::to_string(i + 1)));
            continue;
        }
        const std::string hint = did_you_mean(of, suggesting.after(faults.size()).ingredient_names());
        faults.push_back({"unknown-ingredient", "no ingredient is called '" + of + "'",
                          hint.empty() ? "see them all with: baitwright ingredient list" : hint,
                          "candidate " + std::to_string(i + 1)});
    }
    return faults;
}

}  // namespace baitwright
