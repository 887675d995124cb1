#pragma once

#include <string>
#include <vector>

#include "answers/plan/plan_answer.h"

/// What of a tub is stirred in whole after the last riddling: live, cooked and soaked feed. A tub that holds nothing
/// else has none of it, for there is nothing to stir it into.
/// **Source**: common practice, no source. **Test**: `tests/answers/prep_timetable_test.cpp`.
namespace baitwright {

/// A part that goes in last, or so much of a part.
struct LastPart {
    std::string name;
    Mass mass;  ///< as bought
    bool soaked = false;
};
std::vector<LastPart> last_in_tub(const PlannedBatch& batch);

/// Of all that goes in last.
Mass mass_of(const std::vector<LastPart>& last);

/// What is weighed and stirred together dry, before any water: so much of `batch.dry`, and the names of it. None
/// where all that is in the tub is live, cooked or soaked.
Mass stirred_dry(const PlannedBatch& batch);
std::vector<std::string> stirred_dry_parts(const PlannedBatch& batch);

/// Of `batch.kept_dry`: what goes in last is not in it.
Mass kept_meal(const PlannedBatch& batch);

/// How long the hands take to weigh it and to stir it into so many buckets; nothing where nothing goes in last.
Time stirring_in(const std::vector<LastPart>& last, double buckets);

}  // namespace baitwright
