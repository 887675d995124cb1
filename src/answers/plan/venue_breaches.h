#pragma once

#include <vector>

#include "answers/plan/plan_answer.h"
#include "bait/venue.h"

namespace baitwright {

/// The rule as a sentence without a full stop: "at most 2 kg of pellet, dry, for each angler".
std::string rule_text(const VenueLimit& limit);
std::string rule_text(const VenueBan& ban);

/// What the feeds and hookbaits of one angler (`angler`, for a single session) break, in the order of the rules, limits
/// first. Dry is as bought, its volume loose; wet is as it goes in, and soaked pellets carry their water. Hookbaits are
/// held against limits of a kind or an ingredient and against bans; never against groundbait. A limit met to a
/// thousandth is kept.
std::vector<PlanBreach> venue_breaches(const Venue& venue, const UnrolledStrategy& angler, int people);

}  // namespace baitwright
