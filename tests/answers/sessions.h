#pragma once

#include <rapidcheck.h>

#include "bait/random_mixes.h"
#include "bait/strategy.h"

/// Strategies for the tests, of the draft ingredients.
namespace baitwright::draft_sessions {

inline const FeedTiming at_start{AtOnce{}, {}, {}};

inline Feed cups(const std::string& of, double ml, int count, const std::string& feel = {}) {
    return {at_start, {{of}}, FeedForm::cup, ml * millilitre, count, feel};
}

inline Strategy session(std::vector<Feed> feeds, Ratio spare = 0.0) {
    Strategy strategy;
    strategy.name = "far bank";
    strategy.length = 5.0 * hour;
    strategy.spare = spare;
    strategy.feeds = std::move(feeds);
    return strategy;
}

/// The draft shelf with the fishmeal mix, and an expander for the hook.
class Bank : public MemoryShelf {
public:
    Bank() : MemoryShelf(&draft::shelf()) {
        Recipe mix = draft::fishmeal_mix();
        mix.doses = {{"sweet liquid", {DoseBasis::per_kg_dry, 25.0 * millilitre}}};
        put(mix);
        Ingredient expander = draft::shelf().ingredient("fishmeal pellet 4 mm");
        expander.name = "expander 4 mm";
        expander.kind = IngredientKind::expander;
        put(expander);
    }
};

inline const Shelf& bank() {
    static const Bank shelf;
    return shelf;
}

inline FeedTiming any_timing() {
    switch (*rc::gen::inRange(0, 4)) {
        case 0:
            return {AtOnce{*rc::gen::inRange(0, 400) * minute}, {}, {}};
        case 1:
            return {EveryTime{*rc::gen::inRange(5, 120) * minute}, *rc::gen::inRange(0, 200) * minute, {}};
        case 2:
            return {EveryPutIn{}, *rc::gen::inRange(0, 200) * minute, 250.0 * minute};
        default:
            return {EveryFish{*rc::gen::inRange(1, 9)}, {}, {}};
    }
}

inline Feed any_feed(MemoryShelf& shelf, int number) {
    Feed feed;
    feed.when = any_timing();
    feed.count = *rc::gen::inRange(1, 5);
    feed.form = *rc::gen::element(FeedForm::cup, FeedForm::loose, FeedForm::feeder, FeedForm::ball);
    feed.size = draft::drawn(10, 500, 1) * millilitre;
    if (feed.form == FeedForm::loose && *rc::gen::arbitrary<bool>()) feed.size = draft::drawn(5, 300, 1) * gram;
    if (feed.form == FeedForm::ball) {
        feed.size = draft::drawn(20, 90, 1) * millimetre;
        feed.parts = {{"fishmeal mix", draft::drawn(1, 9, 1)}, {"casters", draft::drawn(1, 3, 1)}};
        return feed;
    }
    if (*rc::gen::arbitrary<bool>()) {
        Recipe recipe = draft::drawn_recipe(draft::Extras::all);
        recipe.name = "mix " + std::to_string(number);
        shelf.put(recipe);
        feed.parts = {{recipe.name}};
    } else {
        feed.parts = {{"fishmeal micro pellet 2 mm", draft::drawn(1, 9, 1), Preparation::soaked},
                      {"fishmeal pellet 4 mm", draft::drawn(1, 9, 1)},
                      {"sweetcorn", draft::drawn(1, 9, 1)}};
    }
    return feed;
}

inline Strategy any_session(MemoryShelf& shelf) {
    Strategy strategy = session({}, draft::drawn(0, 30, 0.01));
    strategy.length = draft::drawn(30, 600, 1) * minute;
    strategy.pace = {draft::drawn(1, 30, 1), draft::drawn(1, 30, 1)};
    for (int i = *rc::gen::inRange(1, 5); i > 0; --i) strategy.feeds.push_back(any_feed(shelf, i));
    strategy.hookbaits = {{"expander 4 mm", BitesPerHour{draft::drawn(1, 60, 1)}},
                          {"maggots", draft::drawn(1, 9, 10) * gram}};
    strategy.feeds.push_back(cups("fishmeal mix", 100, 1));  // so that something goes in
    return strategy;
}

}  // namespace baitwright::draft_sessions
