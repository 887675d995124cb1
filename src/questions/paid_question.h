#pragma once

#include "answers/paid/paid_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// Which ways of feeding are held against each other, and by what; the log is to be added. Throws UsageError, naming
/// the flag.
PaidRequest paid_request(const Arguments& arguments);

}  // namespace baitwright
