#pragma once

#include <string>
#include <vector>

#include "answers/shared/log_answer.h"

namespace baitwright {

/// An entry of the log in a few words: "silt bed, 1000 g dry and 680 ml, firm"; "12 bream, 9.5 kg".
std::string log_entry_text(const LoggedThing& what);

/// What was caught in all: "12 bream, 9.5 kg; 2 tench"; "a blank" where nothing was.
std::string caught_text(const std::vector<LogEntry>& belonging);

/// The same of a session, with what was caught: "open carpet, 5 h: 12 bream, 9.5 kg".
std::string log_group_text(const LoggedGroup& group);

/// The kind of an entry as a person calls it: "session", "mix", "catch".
std::string log_kind_text(const LoggedThing& what);

}  // namespace baitwright
