#pragma once

#include "answers/pellets/soak_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// Which pellets, how much of them, how they are soaked or pumped; the words are the pellets. Throws UsageError, naming
/// the flag.
SoakRequest soak_request(const Arguments& arguments);

/// What is said of the pump, its vessel and the air. Throws UsageError, naming the flag.
void read_pump(const Arguments& arguments, PumpSetup& pump);

/// What goes with expanders alone is refused where none are `pumped`, and what goes with other pellets where none are
/// `soaked`. Throws UsageError.
void refuse_unfit_soak_flags(const Arguments& arguments, bool soaked, bool pumped);

/// In cold water and warm, and between them the water that was asked about.
std::vector<Temperature> waters_to_compare(const Arguments& arguments, Temperature asked);

}  // namespace baitwright
