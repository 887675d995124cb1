#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "answers/money/cost_request.h"
#include "answers/shared/log_answer.h"
#include "files/notes_reader.h"
#include "library/log_groups.h"
#include "library/log_names.h"
#include "store/store.h"

/// Where the log meets files, library and store. Each enters all of what it was given, or nothing.
namespace baitwright {

/// Takes notes into the log, the mixes that came with them into the library, and what they say of the shed into the
/// shed. Sessions, and entries outside any, that are there already are not entered again. What no library knows is kept
/// as it was written. A session whose cost is not told gets the one that is reckoned. Throws InputError with everything
/// that is wrong with the file.
LogAnswer take_notes(Store& store, const LibraryPlace& place, const Notes& notes, const CostRequest& money, Date today);

/// The notes of a group for a person to change: without what follows from the rest of it by the library, so that a feel
/// or an amount can be changed alone.
std::string notes_to_edit(const Shelf& shelf, const LoggedGroup& group);

/// The notes, which hold one session or one entry, in place of the entry and all that belongs to it. A mix that was not
/// changed stays as it was weighed, whatever the recipe says by now.
LogAnswer replace_by_notes(Store& store, const LibraryPlace& place, std::int64_t id, const Notes& notes, Date today);

}  // namespace baitwright
