#pragma once

#include <vector>

#include "answers/plan_answer.h"
#include "bait/shelf.h"
#include "bait/venue.h"
#include "quantities/fault.h"

namespace baitwright {

/// The rule as a sentence without a full stop: "at most 2 kg of pellet, dry, for each angler".
std::string rule_text(const VenueLimit& limit);
std::string rule_text(const VenueBan& ban);

/// Where the rules stand in a venue's file, from 1: "limit 2", "ban 1".
std::string limit_subject(std::size_t limit);
std::string ban_subject(std::size_t ban);

/// Every ingredient in the rules that the shelf does not know.
std::vector<Fault> unknown_names(const Venue& venue, const Shelf& shelf);

/// What the feeds and hookbaits of one angler (`angler`, for a single session) break, in the order of the rules, limits
/// first. Dry is as bought, its volume loose; wet is as it goes in, and soaked pellets carry their water. Hookbaits are
/// held against limits of a kind or an ingredient and against bans; never against groundbait. A limit met to a
/// thousandth is kept.
std::vector<PlanBreach> venue_breaches(const Venue& venue, const UnrolledStrategy& angler, int people);

}  // namespace baitwright
