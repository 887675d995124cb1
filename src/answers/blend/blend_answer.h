#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "bait/blend_spec.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"

namespace baitwright {

/// One end of one limit of a blend.
struct BlendLimitEnd {
    enum class End { least, most };
    std::optional<MixProperty> property;  ///< nothing for a share
    std::vector<std::string> of;          ///< whose share it is; several together
    End end = End::least;
    double bound = 0;  ///< a share as a ratio, a property in the unit of its facts
};

/// A limit that keeps the blend from being cheaper.
struct BindingLimit {
    BlendLimitEnd limit;
    double step = 0;         ///< a step that a person would take, in the unit of the bound
    double price_minor = 0;  ///< what a step tighter costs, a kilogram or a litre by the goal; near this bound
};

struct BlendShare {
    Ingredient ingredient;
    Ratio share;
    double price_per_kilogram = 0;  ///< in unrounded minor units
    Mass weigh;                     ///< in whole steps of a kitchen scale; they come to the batch
    double exact_cost = 0;          ///< of its share as it is saved of the batch, in unrounded minor units
    Money cost;                     ///< the same in whole ones; they come to the whole
};

struct BlendPropertyValue {
    MixProperty property;
    double value;  ///< in the unit of its facts
};

/// The cheapest mix within the limits, or why there is none. Unrounded.
struct BlendAnswer {
    enum class Status { optimal, infeasible };
    std::string name;
    Status status = Status::infeasible;
    BlendGoal goal = BlendGoal::per_kilogram;
    Mass batch;
    const Currency* currency = nullptr;
    double cost_per_kilogram = 0, cost_per_litre = 0;  ///< in minor units; a litre of it dry, loose volumes added
    Money cost;                                        ///< of the batch
    std::vector<BlendShare> shares;                    ///< those in it, the largest first
    std::vector<BlendPropertyValue> properties;        ///< those known of every part
    std::vector<BindingLimit> binding;                 ///< the dearest first
    std::vector<BlendLimitEnd>
        conflicts;  ///< infeasible: together they cannot hold, and without any one of them the others can
    Recipe recipe;  ///< what is saved: shares in percent, to a hundredth
    std::vector<Warning> warnings;
};

}  // namespace baitwright
