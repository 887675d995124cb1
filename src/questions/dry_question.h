#pragma once

#include "answers/mix/dry_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// How large the open tub is, how long it stands, in what air. Throws UsageError, naming the flag.
DryRequest dry_request(const Arguments& arguments);

/// The open face of "40x30cm", "40cm x 30cm", or "35cm" across for a round one. Throws InputError.
Area read_tub(const std::string& text);

}  // namespace baitwright
