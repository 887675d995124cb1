#include "bait/venue_names.h"

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "bait/suggesting_shelf.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

Fault unknown_in_rule(const std::string& name, const std::string& subject, const Shelf& shelf) {
    const std::string hint = near_names_hint(name, shelf.ingredient_names());
    return {"unknown-ingredient", "no ingredient is called '" + name + "'",
            hint.empty() ? "see them all with: baitwright ingredient list" : hint, subject};
}

}  // namespace

std::string limit_subject(std::size_t limit) {
    return "limit " + std::to_string(limit);
}

std::string ban_subject(std::size_t ban) {
    return "ban " + std::to_string(ban);
}

std::vector<Fault> unknown_names(const Venue& venue, const Shelf& shelf) {
    std::vector<Fault> faults;
    const SuggestingShelf suggesting(shelf);
    const auto look = [&](const RuleSubject& subject, const std::string& place) {
        if (const OneIngredient* named = std::get_if<OneIngredient>(&subject))
            if (!named->name.empty() && !shelf.find_ingredient(named->name))
                faults.push_back(unknown_in_rule(named->name, place, suggesting.after(faults.size())));
    };
    for (std::size_t i = 0; i < venue.limits.size(); ++i) look(venue.limits[i].subject, limit_subject(i + 1));
    for (std::size_t i = 0; i < venue.bans.size(); ++i) look(venue.bans[i].subject, ban_subject(i + 1));
    return faults;
}

}  // namespace baitwright
