#pragma once

#include <array>
#include <vector>

#include "answers/shared/mix_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// The flags that say what a mix is made into; each may be given as often as wanted, or hold a list with commas.
inline constexpr std::array<const char*, 3> portion_flags{"--cups", "--balls", "--feeders"};

/// The cups, balls and feeders asked for, in the order in which they were typed, each with its feel where one is said:
/// its own ("2x250ml soft"), or that of --feel, which is one for all that have none of their own, or a list with one
/// for each of these. Empty where none is asked for. Throws UsageError, naming the flag; "unequal-feels".
std::vector<TargetAtFeel> typed_targets(const Arguments& arguments);

}  // namespace baitwright
