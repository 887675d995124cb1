#pragma once

#include "answers/mix/mix_answer.h"
#include "report/told.h"

namespace baitwright {

/// What to do with it, in one line below the title: what to pour first, how long to rest, where to creep to.
void tell_lead(Told& told, const MixAnswer& answer);

}  // namespace baitwright
