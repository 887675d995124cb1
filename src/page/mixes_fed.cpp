#include "page/mixes_fed.h"

#include <algorithm>

#include "answers/strategy/shared_helping.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

bool is_of_the_library(const Feed& feed, const Shelf& shelf) {
    return feed.parts.size() == 1 && !shelf.find_ingredient(feed.parts.front().of) &&
           shelf.find_recipe(feed.parts.front().of);
}

void add_fed(MixesFed& fed, Recipe recipe, bool is_together) {
    if (std::find(fed.names.begin(), fed.names.end(), recipe.name) != fed.names.end()) return;
    fed.names.push_back(recipe.name);
    if (is_together) fed.together.push_back(std::move(recipe));
}

/// Each of what goes into one cup, by its feel. What is wrong with a feed is told by whoever unrolls it.
void add_helping(MixesFed& fed, const Feed& feed, std::size_t number, const Shelf& shelf) {
    try {
        for (const HelpingPart& part : helping_of(feed, number, shelf, std::nullopt, {})) {
            if (part.fed.feel.empty()) continue;  // pellets, seeds: they are no mix
            Recipe recipe = fed_recipe(part.feed, shelf);
            recipe.feel = part.fed.feel;
            add_fed(fed, std::move(recipe), !is_of_the_library(part.feed, shelf));
        }
    } catch (const Error&) {
        return;
    }
}

}  // namespace

MixesFed mixes_fed(const Strategy& strategy, const Shelf& shelf) {
    MixesFed fed;
    for (std::size_t i = 0; i < strategy.feeds.size(); ++i) {
        const Feed& feed = strategy.feeds[i];
        if (is_of_the_library(feed, shelf))
            add_fed(fed, shelf.recipe(feed.parts.front().of), false);
        else if (feed.parts.size() > 1)
            add_helping(fed, feed, i + 1, shelf);
    }
    return fed;
}

}  // namespace baitwright
