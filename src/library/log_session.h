#pragma once

#include <optional>

#include "answers/money/cost_request.h"
#include "answers/shared/log_answer.h"
#include "answers/shared/log_request.h"
#include "library/open_library.h"

namespace baitwright {

/// The session as its strategy plans it, with what was told of it: its mixes with their dry masses, and water only
/// where it was measured, for what was not observed teaches nothing. Throws what `unroll_strategy` throws, UsageError
/// for a mix that it does not feed, Error (answer_is_no) "already-logged".
LogAnswer log_planned(Store& store, const LibraryPlace& place, const PlannedSession& planned, Date on,
                      const CostRequest& money);

/// A catch, of the session of that day: the one with that strategy, where one was told. Where there is none such, it
/// makes one; without a strategy it stands alone. Throws UsageError "several-sessions".
LogAnswer log_catch(Store& store, const LibraryPlace& place, const CatchToLog& caught, Date on,
                    const CostRequest& money);

}  // namespace baitwright
