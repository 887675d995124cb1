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
    std::vector<Warning> warnings;
};

/// How an open tub dries: free water's evaporation (Carrier's form; in still air less by more than two: the band's
/// lower end) times min(h, 1). A lid leaves a tenth of it; in the sun the face is 8 degC warmer than the air (both
/// defaults, from memory). Throws UsageError for what is out of range and what `resolve` throws.
DryAnswer dry_out(const Shelf& shelf, const Recipe& recipe, const DryRequest& request);

}  // namespace baitwright
