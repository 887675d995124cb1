#pragma once

#include "answers/shared/searched_entry.h"
#include "bait/venue.h"

namespace baitwright {

/// What is searched of a venue: its rules as they are told.
SearchedEntry searched(const Venue& venue);

}  // namespace baitwright
