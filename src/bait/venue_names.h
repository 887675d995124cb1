#pragma once

#include <string>
#include <vector>

#include "bait/shelf.h"
#include "bait/venue.h"
#include "quantities/fault.h"

namespace baitwright {

/// Where the rules stand in a venue's file, from 1: "limit 2", "ban 1".
std::string limit_subject(std::size_t limit);
std::string ban_subject(std::size_t ban);

/// Every ingredient in the rules that the shelf does not know.
std::vector<Fault> unknown_names(const Venue& venue, const Shelf& shelf);

}  // namespace baitwright
