#pragma once

#include "bait/blend_spec.h"
#include "bait/venue.h"
#include "files/library_file.h"
#include "store/store.h"

namespace baitwright {

/// Calls `change(std::string&)` with each name of an ingredient in it; true where any of the calls was.
template <class Change>
bool each_name(Venue& venue, Change&& change) {
    bool changed = false;
    const auto look = [&](RuleSubject& subject) {
        if (OneIngredient* named = std::get_if<OneIngredient>(&subject)) changed = change(named->name) || changed;
    };
    for (VenueLimit& limit : venue.limits) look(limit.subject);
    for (VenueBan& ban : venue.bans) look(ban.subject);
    return changed;
}
template <class Change>
bool each_name(BlendSpec& blend, Change&& change) {
    bool changed = false;
    for (BlendCandidate& candidate : blend.candidates) changed = change(candidate.of) || changed;
    for (BlendLimit& limit : blend.limits)
        for (std::string& name : limit.of) changed = change(name) || changed;
    return changed;
}

/// Gives what the file's entries refer to by a name that was given up its present name. Throws InputError
/// "unknown-ingredient" for what was removed, with how to have it back.
void follow_renames(const Store& store, LibraryFile& file);

}  // namespace baitwright
