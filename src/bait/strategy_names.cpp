#include "bait/strategy_names.h"

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/recipe_names.h"
#include "bait/suggesting_shelf.h"
#include "quantities/suggestion.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

void add_unknown_parts(const Feed& feed, std::size_t number, const Shelf& shelf, std::vector<Fault>& faults) {
    const SuggestingShelf suggesting(shelf);
    for (std::size_t i = 0; i < feed.parts.size(); ++i) {
        const std::string& of = feed.parts[i].of;
        if (!of.empty() && !shelf.find_ingredient(of) && !shelf.find_recipe(of))
            faults.push_back(unknown_part(of, feed_part_subject(number, i + 1), suggesting.after(faults.size())));
    }
}

void add_unknown_part_feels(const Feed& feed, std::size_t number, const std::vector<Feel>& feels, const Shelf& shelf,
                            std::vector<Fault>& faults) {
    for (std::size_t i = 0; i < feed.parts.size(); ++i) {
        const std::string& feel = feed.parts[i].feel;
        if (!feel.empty() && !find_feel(feels, feel))
            faults.push_back(unknown_feel(feel, shelf, feed_part_feel_subject(number, i + 1)));
    }
}

}  // namespace

std::string name_of(const Feed& feed) {
    std::string name;
    for (std::size_t i = 0; i < feed.parts.size(); ++i)
        name += (i == 0 ? "" : i + 1 == feed.parts.size() ? " and " : ", ") + feed.parts[i].of;
    return name;
}

std::string feed_subject(std::size_t feed) {
    return "feed " + std::to_string(feed);
}

std::string feed_part_subject(std::size_t feed, std::size_t part) {
    return feed_subject(feed) + " part " + std::to_string(part);
}

std::string feed_part_feel_subject(std::size_t feed, std::size_t part) {
    return feed_part_subject(feed, part) + " feel";
}

std::string feed_feel_subject(std::size_t feed) {
    return feed_subject(feed) + " feel";
}

std::string feed_after_subject(std::size_t feed) {
    return feed_subject(feed) + " after";
}

std::string hookbait_subject(std::size_t hookbait) {
    return "hookbait " + std::to_string(hookbait);
}

Fault unknown_hookbait(const std::string& of, const std::string& subject, const Shelf& shelf) {
    const std::string hint = near_names_hint(of, shelf.ingredient_names());
    return {"unknown-ingredient", "no ingredient is called '" + of + "'",
            hint.empty() ? worded("see what there is with: baitwright ingredient list --kind expander",
                                  "choose it from the list")
                         : hint,
            subject};
}

std::vector<Fault> unknown_names(const Strategy& strategy, const Shelf& shelf) {
    std::vector<Fault> faults;
    const SuggestingShelf suggesting(shelf);
    const std::vector<Feel> feels = shelf.feels();
    for (std::size_t i = 0; i < strategy.feeds.size(); ++i) {
        const Feed& feed = strategy.feeds[i];
        add_unknown_parts(feed, i + 1, shelf, faults);
        if (!feed.feel.empty() && !find_feel(feels, feed.feel))
            faults.push_back(unknown_feel(feed.feel, shelf, feed_feel_subject(i + 1)));
        add_unknown_part_feels(feed, i + 1, feels, shelf, faults);
    }
    for (std::size_t i = 0; i < strategy.hookbaits.size(); ++i) {
        const std::string& of = strategy.hookbaits[i].of;
        if (!of.empty() && !shelf.find_ingredient(of))
            faults.push_back(unknown_hookbait(of, hookbait_subject(i + 1), suggesting.after(faults.size())));
    }
    return faults;
}

}  // namespace baitwright
