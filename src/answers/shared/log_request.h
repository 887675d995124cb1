#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "bait/log_entry.h"

namespace baitwright {

/// A session as it was planned, and what differed; names as they were typed.
struct PlannedSession {
    LoggedSession session;  ///< its length nothing: the strategy's
    enum class Mixes { entered, left_out };
    Mixes mixes = Mixes::entered;
    std::vector<LoggedCatch> caught = {};
    std::vector<std::pair<std::string, Mass>> water = {};         ///< poured, of a mix
    std::vector<std::pair<std::string, std::string>> feels = {};  ///< of a mix
};

/// A catch, and the session that it is to belong to, or to make.
struct CatchToLog {
    LoggedCatch caught;
    LoggedSession session = {};  ///< its strategy empty: whatever session there is
};

/// A mix as it was weighed and felt, and what the moisture of its bags was.
struct MixToLog {
    LoggedMix mix;
    std::vector<std::pair<std::string, Ratio>> moistures = {};
};

}  // namespace baitwright
