#pragma once

#include <string>
#include <utility>
#include <vector>

#include "bait/draft_shelf.h"

/// Pulses and nuts for the tests: raw, cooked and as meal.
namespace baitwright::draft {

/// As the draft ingredient is, of another kind and with these cautions.
inline Ingredient grain(std::string name, const char* like, IngredientKind kind, std::vector<std::string> cautions) {
    Ingredient grain = shelf().ingredient(like);
    grain.name = std::move(name);
    grain.kind = kind;
    grain.cautions = std::move(cautions);
    return grain;
}

/// The draft shelf with raw peas, cooked peas, pea meal, and raw vetches that nobody cooks.
class SeedShelf : public MemoryShelf {
public:
    SeedShelf() : MemoryShelf(&shelf()) {
        put(grain("maple peas, dry", "maize meal", IngredientKind::seed, {"pulse", "hard seed"}));
        put(grain("vetches, raw", "maize meal", IngredientKind::seed, {"pulse"}));
        put(grain("pearl millet", "maize meal", IngredientKind::seed, {"hard seed"}));
        put(grain("sesame", "maize meal", IngredientKind::seed, {"sesame"}));
        put(grain("cooked maple peas", "sweetcorn", IngredientKind::particle, {"pulse"}));
        put(grain("pea meal", "maize meal", IngredientKind::base, {"pulse", "dust"}));
    }
};

inline const Shelf& seeds() {
    static const SeedShelf shelf;
    return shelf;
}

}  // namespace baitwright::draft
