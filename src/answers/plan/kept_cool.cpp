#include <algorithm>

#include "answers/plan/hot_day.h"
#include "bait/ingredient_cautions.h"
#include "quantities/sort_stably.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr Time fresh_for = 14.0 * 24.0 * hour;  // what keeps no longer in the bag is fresh

/// By its kind and how it keeps; nothing for what a warm day does no harm.
std::optional<KeptCool> cool_kind(const Ingredient& one) {
    if (one.kind == IngredientKind::particle) {
        if (has_caution(one, "live")) return KeptCool::live;
        return one.keeps.dry ? std::nullopt : std::optional(KeptCool::cooked);
    }
    if (one.kind == IngredientKind::pellet || one.kind == IngredientKind::expander) return KeptCool::pellets;
    const bool spoils = one.keeps.dry && *one.keeps.dry < fresh_for;
    return one.kind == IngredientKind::base && spoils ? std::optional(KeptCool::fresh_bread) : std::nullopt;
}

bool is_soaked(const SessionPlan& plan, const std::string& name) {
    return std::any_of(plan.soaks.begin(), plan.soaks.end(),
                       [&](const PlannedSoak& soak) { return soak.name == name; });
}

/// In a tub that is wetted, and so looked after as that.
Mass in_wetted_tubs(const SessionPlan& plan, const std::string& name) {
    Mass sum;
    for (const PlannedBatch& batch : plan.batches)
        for (const PlannedTotal& part : batch.parts)
            if (!batch.feel.empty() && part.name == name) sum += part.mass;
    return sum;
}

}  // namespace

std::vector<CoolThing> kept_cool(const UnrolledStrategy& session, const SessionPlan& plan) {
    std::vector<CoolThing> things;
    for (const IngredientNeed& total : session.totals) {
        const std::string& name = total.ingredient.name;
        const std::optional<KeptCool> kind = cool_kind(total.ingredient);
        if (!kind) continue;
        if (is_soaked(plan, name))
            things.push_back({name, KeptCool::soaked});
        else if (*kind != KeptCool::pellets || in_wetted_tubs(plan, name) < 0.999 * total.mass)
            things.push_back({name, *kind});
    }
    sort_stably(things.begin(), things.end(), [](const CoolThing& a, const CoolThing& b) { return a.kind < b.kind; });
    return things;
}

}  // namespace baitwright
