#pragma once

#include "answers/drop_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// How the feed goes in, where, and what the person saw of it. Throws UsageError, naming the flag.
DropRequest drop_request(const Arguments& arguments);

/// At the command line: a flag that says nothing of what goes in, or what cannot have been seen, is a slip. (The page
/// keeps its fields while the form is changed.) Throws UsageError.
void refuse_unfit_drop_flags(const Arguments& arguments, const DropRequest& request);

}  // namespace baitwright
