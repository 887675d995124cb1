#pragma once

#include <optional>
#include <vector>

#include "answers/plan/tub_course.h"
#include "bait/feel.h"

namespace baitwright {

/// What dries a tub: the mix as it is wetted, the edge of its feel, the face that is open, and what that loses.
struct DryingTub {
    const TubCourse& tub;
    const FedMix& fed;
    const std::vector<Feel>& feels;
    Range<MassFlux> loss;  ///< still air, between, moving air
    Area face;
};

/// When it is drier than its feel, left alone in one go; nothing where the last of it is in before.
std::optional<Time> leaves_feel(const DryingTub& drying);

/// When and how much to spray, set in `damp`, whose `until`, `leaves_feel` and `later` are known. By the half hour, or
/// by the hour where that is too little to spray; where it would leave its feel before a spray, as much more often as
/// keeps it, down to every 10 min. Where even that does not, or each would be less than 1 g, `keeps_feel` says so. The
/// last is before its last put-in. **Source**: common practice, no source.
/// **Test**: `tests/answers/hot_day_test.cpp`.
void set_sprays(DampTub& damp, const DryingTub& drying);

}  // namespace baitwright
