#pragma once

#include <optional>

#include "answers/plan/rest_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// When it is and what is left, on the day; `start` in minutes since midnight, where there is a clock. Throws
/// UsageError, naming the flag, and InputError.
RestRequest rest_request(const Arguments& arguments, const std::optional<int>& start);

/// --now, --left and --bites go together.
void refuse_unfit_rest_flags(const Arguments& arguments);

}  // namespace baitwright
