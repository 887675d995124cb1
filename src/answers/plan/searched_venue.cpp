#include "answers/plan/searched_venue.h"

#include "answers/plan/venue_breaches.h"

namespace baitwright {

SearchedEntry searched(const Venue& venue) {
    SearchedEntry entry{EntryKind::venue, venue.name, "venue", {kind_text(EntryKind::venue), {"note", venue.note}}};
    for (const VenueLimit& limit : venue.limits) entry.texts.push_back({"limit", rule_text(limit)});
    for (const VenueBan& ban : venue.bans) entry.texts.push_back({"ban", rule_text(ban)});
    for (const std::string& rule : venue.rules) entry.texts.push_back({"rule", rule});
    return entry;
}

}  // namespace baitwright
