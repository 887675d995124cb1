#pragma once

#include <string>
#include <vector>

#include "quantities/fault.h"

namespace baitwright {

/// Faults as a person reads them: `file:line:column: error: what`, the line, a caret, `hint: how to mend it`; without a
/// place, `error: what` and the hint.
std::string fault_text(const std::vector<Fault>& faults);

}  // namespace baitwright
