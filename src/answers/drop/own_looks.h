#pragma once

#include "answers/drop/drop_answer.h"
#include "answers/drop/drop_portion.h"

namespace baitwright {

/// Names in the answer the looks of the person that it goes by, and those that tell nothing of this feed, with why: how
/// long it held of what bursts, floats or is loose; how deep it broke of what is squeezed; where nothing sinks, how
/// wide it lay. `sinks` is whether anything of it does.
void name_looks(const DropSetup& setup, bool sinks, DropAnswer& answer);

/// A look that tells nothing of the feed is a slip where it alone is asked for; side by side it holds for the others.
/// Throws UsageError "unfit-flag".
void refuse_idle_looks(const DropAnswer& answer);

}  // namespace baitwright
