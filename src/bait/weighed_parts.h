#pragma once

#include <utility>
#include <vector>

#include "bait/feel.h"
#include "bait/log_entry.h"
#include "bait/resolved_mix.h"

namespace baitwright {

/// Gives a logged mix the wetness that its feel means (the feel's aim) and how closely a hand reads it
/// (`reading_spread`), where they were not told. A feel that is not among them tells nothing.
void read_feel(LoggedMix& logged, const std::vector<Feel>& feels);

/// The moisture of a bag, as it was told, by the name of what is in it.
using BagMoistures = std::vector<std::pair<std::string, Ratio>>;

/// Gives a logged mix whose dry mass and water are told, and whose parts are not, the parts that take water and the
/// wetting of all else that is in it: the liquids, the doses (those by water by what was poured) and the films of
/// soaked pellets. The recipe may change later; what was weighed does not. **Test**:
/// `tests/bait/weighed_parts_test.cpp`.
void weigh_parts(LoggedMix& logged, const ResolvedMix& mix, const BagMoistures& moistures = {});

}  // namespace baitwright
