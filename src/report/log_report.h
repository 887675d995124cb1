#pragma once

#include <string>

#include "answers/shared/log_answer.h"
#include "report/reply.h"

/// The log as it is told: what was entered or taken back, all of it in a list, and one entry in full.
namespace baitwright {

/// `command` is the command's name: "log add".
Reply log_reply(const std::string& command, LogAnswer answer);
Reply log_list_reply(LogListAnswer answer);
Reply log_shown_reply(LoggedGroup group);

}  // namespace baitwright
