#pragma once

#include <vector>

#include "answers/money/cost_request.h"
#include "cli/command.h"

namespace baitwright {

/// The flags of a session that is logged: when, how long, how many, where, what the water was like, the cost, a note.
std::vector<Flag> log_session_flags();

/// --on, of an entry of the log.
Flag logged_on_flag();

/// By what a session's cost is reckoned where it is not told.
CostRequest money_of_log(const Arguments& arguments, Date on);

/// The store. Throws UsageError for `--library`.
Store log_store(const Surroundings& around);

}  // namespace baitwright
