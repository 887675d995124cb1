#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/mix/dose_request.h"
#include "answers/mix/mix_answer.h"
#include "answers/shared/mix_request.h"
#include "answers/shared/warning.h"
#include "bait/shelf.h"

namespace baitwright {

struct DoseLine {
    std::string name;
    bool liquid = false;
    std::string rate;
    Mass mass;
    Volume volume;
    Mass wetting;
    Ratio per_dry;                      ///< g per g of dry bait
    std::optional<Ratio> of_label_max;  ///< 1 is the label's most; nothing where there is no label
};

/// What an additive makes of the water it is stirred into.
struct Solution {
    std::string of;
    Ratio concentration;  ///< mass of the additive over mass of all
    std::optional<Density> density;
    std::optional<Ratio> water_activity;
};

struct DoseAnswer {
    std::string of;  ///< the mix or the bait
    Mass dry_mass;
    Mass water;
    std::vector<DoseLine> additives;
    std::optional<Solution> solution;
    std::vector<Warning> warnings;
};

/// One additive on one bait. Amounts are carried from one bait to another by dry mass, not by volume: a pint of dense
/// pellets takes more than a pint of light ones. Throws UsageError and NotFound.
DoseAnswer dose_additive(const Shelf& shelf, const AdditiveRequest& request);

/// The additives of a mix at the size asked for. Throws what `scale_mix` throws.
DoseAnswer dose_mix(const Shelf& shelf, const Recipe& recipe, const MixRequest& request);

}  // namespace baitwright
