#pragma once

#include <string>
#include <utility>
#include <vector>

#include "answers/blend/blend_mix.h"
#include "bait/draft_shelf.h"
#include "bait/ingredient.h"
#include "quantities/money.h"
#include "solver/clp_solver.h"

/// Blends of invented candidates whose protein, fibre and salt are set by the test.
namespace baitwright::blending {

struct Made {
    std::string name;
    double protein, fibre, salt;  // %
    std::int64_t pence;           // a kilo
};

/// A shelf of them: what else they are is that of brown crumb.
class MadeShelf : public MemoryShelf {
public:
    explicit MadeShelf(const std::vector<Made>& all) : MemoryShelf(&draft::shelf()) {
        for (const Made& made : all) {
            Ingredient ingredient = draft::solid_of(draft::solids[0]);
            ingredient.name = made.name;
            ingredient.composition.protein = draft::stated<Ratio>(made.protein / 100);
            ingredient.composition.fibre = draft::stated<Ratio>(made.fibre / 100);
            ingredient.composition.salt = draft::stated<Ratio>(made.salt / 100);
            put(std::move(ingredient));
        }
    }
};

inline BlendSpec spec_of(const std::vector<Made>& all, std::vector<BlendLimit> limits) {
    BlendSpec spec;
    spec.name = "made";
    for (const Made& made : all)
        spec.candidates.push_back(
            {made.name,
             {},
             parse_money("£" + std::to_string(made.pence / 100) + "." + std::to_string(made.pence % 100 / 10) +
                         std::to_string(made.pence % 10))});
    spec.limits = std::move(limits);
    return spec;
}

inline BlendLimit on(MixProperty property, std::optional<double> least, std::optional<double> most = {}) {
    return {property, {}, {least, most}};
}

inline BlendAnswer blended(const std::vector<Made>& all, const BlendSpec& spec, const BlendRequest& request = {}) {
    ClpSolver solver;
    const MadeShelf shelf(all);
    return blend_mix(shelf, spec, request, solver);
}

inline double share_in(const BlendAnswer& answer, const std::string& name) {
    for (const BlendShare& share : answer.shares)
        if (share.ingredient.name == name) return share.share;
    return 0;
}

}  // namespace baitwright::blending
