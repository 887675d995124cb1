#include "answers/over_label.h"

#include <cmath>

namespace baitwright {

Warning over_label(const Ingredient& additive, Ratio of_label) {
    const std::string percents = std::to_string(std::lround(of_label * 100));
    return {"over-label",
            "the " + additive.name + " comes to " + percents + " % of the label's most, " +
                dose_rate_text(*additive.label_dose),
            true};
}

}  // namespace baitwright
