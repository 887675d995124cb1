#pragma once

#include <rapidcheck.h>

#include <string>

#include "bait/learnt.h"
#include "bait/log_entry.h"

namespace baitwright {

/// Of a kind (an index of `LoggedThing`, but for undoings), with everything that can be said of it said or left out at
/// random: any text, any number within what a log may hold.
LoggedThing any_logged(std::size_t kind);
/// Of any kind, on any day, of no session.
LogEntry any_log_entry();

/// Every field as text, numbers by their bits: two entries are the same where these are. The entry's own number and
/// what took it back are left out.
std::string written_out(const LogEntry& entry);

/// What a log may have taught of so many bags, "bag 1" and so on; with so many numbers in each row.
LearntWater any_learnt(std::size_t bags, std::size_t rank);
std::string written_out(const LearntWater& water);

}  // namespace baitwright
