#pragma once

#include <cstdint>
#include <map>
#include <string>

#include "store/store.h"

namespace baitwright {

/// Marks that entries of two logs are to have, by the entries' numbers, so that a merge knows them as one.
struct MarksToGive {
    std::map<std::int64_t, std::string> ours, theirs;
};

/// What was typed into one store, written out as notes and taken into the other is one session, though each store gave
/// it a mark of its own: what was typed gets the mark that its notes have given it. So for a session of the same
/// strategy, day and start that is told alike, and for what belongs to it; and for what was told alone. What was taken
/// back counts, too, and stays so.
MarksToGive marks_of_told_twice(const Store& ours, const Store& theirs);

}  // namespace baitwright
