#pragma once

#include <vector>

#include "bait/venue.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

Told venue_list_told(const std::vector<Venue>& venues);
Json venue_list_json(const std::vector<Venue>& venues);
Told venue_told(const Venue& venue);
Json venue_json(const Venue& venue);

}  // namespace baitwright
