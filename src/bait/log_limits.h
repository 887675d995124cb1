#pragma once

#include <vector>

#include "bait/log_entry.h"
#include "quantities/fault.h"

namespace baitwright {

/// What in an entry of the log cannot be what a person meant. Its subject is the key that session notes have for it:
/// "water", "under_water". **Source**: our own bounds, wider than anybody mixes or fishes.
/// **Test**: `tests/files/notes_reader_test.cpp`.
std::vector<Fault> log_faults(const LoggedThing& what);

}  // namespace baitwright
