#pragma once

#include "bait/strategy.h"
#include "report/json.h"

namespace baitwright {

/// A strategy as a page carries it, with the keys of its file; what is not stated is left out. `when` is [rhythm,
/// number], `size` of a feed and `amount` of a hookbait [alternative, number].
Json strategy_data(const Strategy& strategy);
/// Throws where the data are not whole.
Strategy strategy_in(const Json& data);

}  // namespace baitwright
