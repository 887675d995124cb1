#pragma once

#include "answers/blend/share_batch.h"
#include "quantities/date.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

/// What to buy for a batch, what each pays, and a label for each bag to cut out.
Told share_told(const BlendAnswer& blend, const SharedBatch& shared, Date mixed_on);
Json share_json(const SharedBatch& shared, Date mixed_on);

}  // namespace baitwright
