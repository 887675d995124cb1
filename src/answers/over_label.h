#pragma once

#include "answers/warning.h"
#include "bait/ingredient.h"

namespace baitwright {

/// The warning for a dose above the most that the additive's label allows.
inline Warning over_label(const Ingredient& additive, const std::string& planned) {
    return {"over-label",
            additive.name + ": " + planned + " is more than the label's most, " + dose_rate_text(*additive.label_dose),
            true};
}

}  // namespace baitwright
