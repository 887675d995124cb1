#include "bait/measured_marks.h"

#include "quantities/fault.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"

namespace baitwright {

std::optional<WaterMarks> marks_in_bag(const Ingredient& ingredient, Ratio moisture) {
    if (!takes_water(ingredient.kind)) return std::nullopt;
    if (!(moisture >= 0 && moisture <= 0.99))
        throw UsageError("out-of-range", "--moisture must be from 0 to 99 %", "for example --moisture 8%");
    const WaterMarks moved =
        marks_at_moisture({ingredient.absorption.value, ingredient.slump.value}, ingredient.moisture.value, moisture);
    if (!(moved.absorption > 0))
        throw UsageError("too-damp", "a bag as damp as that takes no more water by the reckoning from its old moisture",
                         "measure its absorption and slump as it is: --absorption and --slump beside --moisture");
    return moved;
}

void check_absorption_measured(const Ingredient& ingredient, Ratio absorption) {
    if (!ingredient.slump.stated() || absorption < ingredient.slump.value) return;
    throw UsageError("inconsistent-values",
                     "that absorption is not below the slump of " + ingredient.name + " in the library, " +
                         exact_text(ingredient.slump.value, one, "g/g"),
                     "measure the slump too, with the up-ended pot, and give both: --absorption and --slump");
}

}  // namespace baitwright
