#pragma once

#include <string>

#include "answers/blend/share_batch.h"
#include "quantities/date.h"
#include "report/json.h"

namespace baitwright {

/// What to buy for a batch, what each pays, and a label for each bag to cut out.
std::string share_text(const BlendAnswer& blend, const SharedBatch& shared, Date mixed_on);
Json share_json(const BlendAnswer& blend, const SharedBatch& shared, Date mixed_on);

}  // namespace baitwright
