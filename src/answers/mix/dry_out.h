#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/mix/dry_request.h"
#include "answers/shared/warning.h"
#include "bait/recipe.h"
#include "bait/shelf.h"

namespace baitwright {

template <class Q>
struct LowHigh {
    Q low{}, high{};
};

struct DryAnswer {
    std::string recipe, feel, becomes;  ///< the feel it is after the time, at the higher loss
    Ratio wetness, wetness_after_low, wetness_after_high;
    Mass dry_mass;
    Time hours;
    bool covered = false, in_sun = false;
    LowHigh<Mass> loss_per_hour;
    LowHigh<std::optional<Time>> until_it_leaves;  ///< its feel; nothing where it does not within 48 h
    LowHigh<Mass> to_spray;                        ///< over the time, to keep it as it was
    LowHigh<Mass> lost;                            ///< over the time, left alone
    std::vector<Warning> warnings;
};

/// How an open tub dries: as a wet face at the warmth that air and sun give it (`wet_face_loss`); the band's lower end
/// is for air that its rim keeps nearly still. Below a wetness of 1 the rate falls with what is left, as a crust dries
/// (`DryingCourse`). A lid leaves a tenth of it; the sun brings `sun_on_bait`. Throws UsageError for what is out of
/// range and what `resolve` throws. **Test**: `tests/answers/dry_out_test.cpp`.
DryAnswer dry_out(const Shelf& shelf, const Recipe& recipe, const DryRequest& request);

}  // namespace baitwright
