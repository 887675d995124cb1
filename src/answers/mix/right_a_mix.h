#pragma once

#include <string>
#include <vector>

#include "answers/mix/own_values_told.h"
#include "answers/mix/tub_holds.h"
#include "answers/mix/tub_request.h"
#include "answers/shared/warning.h"
#include "bait/shelf.h"

namespace baitwright {

/// Where the tub stands and the least addition that puts it right once settled. One of the two additions is 0.
struct TubAnswer {
    std::string recipe, wanted_feel;
    Ratio wanted_wetness;
    Mass dry_mass, water_in;
    Ratio wetness_now, wetness_settled;
    std::string feel_now, feel_settled;
    Time settles_in;  ///< until 90 % of the absorption is taken up, from now
    Mass water_to_add;
    Mass dry_to_add;  ///< of the parts of the mix that take water
    bool all_parts_take_water = true;
    TubRoom as_it_stands, put_right;  ///< settled; the same where nothing is to add
    std::vector<TubMakes> makes;      ///< put right, in the order asked for
    LearntUsed learnt;
    std::vector<Warning> warnings;
};

/// Throws UsageError (a dry mass, water or size that is not possible, an unknown feel, "unfit-state" where the feel is
/// too dry or too wet for what is to be made) and what `resolve` throws.
TubAnswer right_a_mix(const Shelf& shelf, const Recipe& recipe, const TubRequest& request);

}  // namespace baitwright
