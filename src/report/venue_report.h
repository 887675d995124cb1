#pragma once

#include <string>
#include <vector>

#include "bait/venue.h"
#include "report/json.h"

namespace baitwright {

std::string venue_list_text(const std::vector<Venue>& venues);
Json venue_list_json(const std::vector<Venue>& venues);
std::string venue_text(const Venue& venue);
Json venue_json(const Venue& venue);

}  // namespace baitwright
