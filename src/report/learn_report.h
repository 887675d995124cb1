#pragma once

#include <string>
#include <vector>

#include "answers/learn/learn_answer.h"
#include "report/reply.h"

namespace baitwright {

/// What the log teaches, and what was written of it.
struct LearnReport {
    enum class Done { only_shown, stands_already, written, nothing_to_write };
    LearnAnswer answer;
    Done done = Done::only_shown;
    std::vector<std::string> written = {};  ///< ingredients and mixes that answer by it from now on
};

Reply learn_reply(LearnReport report);

/// What was taken back of what was written last.
Reply learn_undone_reply(std::vector<std::string> taken_back);

}  // namespace baitwright
