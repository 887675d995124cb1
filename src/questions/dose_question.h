#pragma once

#include "answers/mix/dose_request.h"
#include "answers/shared/mix_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// One additive on a bait. Throws UsageError, naming the flag, as all of these do.
AdditiveRequest additive_request(const Arguments& arguments);

/// The amount of a mix whose additives are asked for: --amount is its dry mass, or a volume of it wet.
MixRequest mix_amount_request(const Arguments& arguments);

/// What goes with one additive alone is refused with a mix.
void refuse_additive_flags(const Arguments& arguments);

}  // namespace baitwright
