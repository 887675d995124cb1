#pragma once

#include "answers/learn/learn_answer.h"
#include "store/store.h"

namespace baitwright {

/// What the store's log teaches, with the new bags that came into its shed.
LearnAnswer learn_from_store(Store& store, Date today);

/// Says of these entries that they are true, however far off, so that they are never set aside; or, taken back, that
/// they may be. All or none. Throws NotFound "unknown-entry", or UsageError "teaches-nothing" for one that is no
/// observation.
enum class Belief { believed, judged };
void set_belief(Store& store, const std::vector<std::int64_t>& entries, Belief belief);

}  // namespace baitwright
