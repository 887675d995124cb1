#include "answers/strategy/fed_mix.h"

#include <algorithm>

#include "answers/shared/mix_amount.h"
#include "answers/shared/take_out.h"
#include "answers/shared/wanted_feel.h"
#include "bait/pellets_alone.h"
#include "bait/recipe_names.h"
#include "bait/resolve_mix.h"
#include "bait/strategy_names.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

bool is_mix(const FeedPart& part, const Shelf& shelf) {
    return !shelf.find_ingredient(part.of) && shelf.find_recipe(part.of);
}

Feed left_of(Feed feed, const std::vector<std::string>& without) {
    const auto gone = std::remove_if(feed.parts.begin(), feed.parts.end(),
                                     [&](const FeedPart& part) { return is_named(without, part.of); });
    feed.parts.erase(gone, feed.parts.end());
    return feed;
}

/// The faults of opening it up, at their feed. A mix's own parts have no place in the strategy's file.
[[noreturn]] void rethrow_at(const InputError& error, const Feed& feed, std::size_t number, bool mix_alone) {
    std::vector<Fault> faults = error.faults();
    for (Fault& fault : faults) {
        if (!mix_alone && fault.subject.rfind("part ", 0) == 0) {
            fault.subject = feed_subject(number) + " " + fault.subject;
            continue;
        }
        fault.subject = feed_part_subject(number, 1);
        if (mix_alone) fault.message += " (in the mix '" + feed.parts.front().of + "')";
    }
    throw InputError(std::move(faults));
}

ResolvedMix opened(const Feed& feed, std::size_t number, const Shelf& shelf) {
    for (std::size_t i = 0; i < feed.parts.size(); ++i)
        if (!shelf.find_ingredient(feed.parts[i].of) && !shelf.find_recipe(feed.parts[i].of))
            throw InputError(unknown_part(feed.parts[i].of, feed_part_subject(number, i + 1), shelf));
    const Recipe recipe = fed_recipe(feed, shelf);
    try {
        return resolve(recipe, shelf);
    } catch (const InputError& error) {
        rethrow_at(error, feed, number, feed.parts.size() == 1 && is_mix(feed.parts.front(), shelf));
    }
}

bool is_meal(IngredientKind kind) {
    return kind == IngredientKind::base || kind == IngredientKind::powder || kind == IngredientKind::soil;
}

bool is_wetted(const Feed& feed, const ResolvedMix& mix, const Shelf& shelf) {
    if (!(water_need(numbers_of(mix).solids).wetted_share > 0)) return false;
    if (!feed.feel.empty() || feed.form == FeedForm::ball) return true;
    for (const FeedPart& part : feed.parts)
        if (is_mix(part, shelf)) return true;
    return std::any_of(mix.solids.begin(), mix.solids.end(),
                       [](const SolidPart& part) { return is_meal(part.ingredient.kind); });
}

MixState state_of(const Feed& feed, Ratio wetness) {
    switch (feed.form) {
        case FeedForm::ball:
            return MixState::squeezed;
        case FeedForm::loose:
            return usual_state(wetness);
        default:
            return MixState::cupped;
    }
}

void set_feel(FedMix& fed, const Feed& feed, std::size_t number, const Shelf& shelf,
              const std::optional<std::string>& asked) {
    const std::vector<Feel> feels = shelf.feels();
    const WantedFeel feel = wanted_feel(feels, feed.feel.empty() ? fed.mix.feel : *find_feel(feels, feed.feel), asked);
    fed.feel = feel.name;
    fed.wetness = feel.wetness;
    fed.state = state_of(feed, feel.wetness);
    if (can_be(fed.state, fed.wetness)) return;
    const bool dry = fed.wetness < 1;
    throw InputError(
        {"unfit-state",
         "at the feel '" + fed.feel + "' " + name_of(feed) + " is too " + (dry ? "dry" : "wet") + " for a ball",
         dry ? "make it wetter, such as firm, or feed it in a cup" : "make it drier, such as firm, or feed it in a cup",
         feed_feel_subject(number)});
}

/// Pellets alone: pressed into feeders and balls, else poured.
bool presses_pellets(FeedForm form) {
    return form == FeedForm::ball || form == FeedForm::feeder;
}

void soak(FedMix& fed, FeedForm form) {
    soak_pellets_alone(fed.mix);
    fed.state = presses_pellets(form)     ? MixState::squeezed
                : form == FeedForm::loose ? MixState::riddled
                                          : MixState::cupped;
    fed.wetness = wetness_of_pellets(fed.state);
}

struct DryMassIn {
    const FedPerDry& each;
    Mass operator()(Mass wet) const { return wet / each.wet_mass; }
    Mass operator()(Volume wet) const { return wet / each.wet_volume; }
    Mass operator()(Length diameter) const { return ball_volume(diameter) / each.wet_volume; }
};

}  // namespace

Recipe fed_recipe(const Feed& feed, const Shelf& shelf) {
    if (feed.parts.size() == 1 && is_mix(feed.parts.front(), shelf) &&
        feed.parts.front().prepare == Preparation::as_bought)
        return shelf.recipe(feed.parts.front().of);
    Recipe recipe;
    recipe.name = name_of(feed);
    for (const FeedPart& part : feed.parts) {
        recipe.parts.push_back({part.of, Share{part.share}, part.prepare});
        if (recipe.feel.empty() && is_mix(part, shelf)) recipe.feel = shelf.recipe(part.of).feel;
    }
    return recipe;
}

std::optional<FedMix> fed_mix(const Feed& whole, std::size_t number, const Shelf& shelf,
                              const std::optional<std::string>& feel, const std::vector<std::string>& without) {
    const Feed feed = left_of(whole, without);
    if (feed.parts.empty()) return std::nullopt;
    FedMix fed;
    fed.mix = opened(feed, number, shelf);
    fed.mix.name = name_of(feed);
    if (!take_out(fed.mix, without)) return std::nullopt;
    if (!feed.feel.empty() && !find_feel(shelf.feels(), feed.feel))
        throw InputError(unknown_feel(feed.feel, shelf, feed_feel_subject(number)));
    const bool wetted = is_wetted(feed, fed.mix, shelf);
    if (is_pellets_alone(fed.mix) && (wetted || presses_pellets(feed.form))) {
        soak(fed, feed.form);
    } else if (wetted) {
        set_feel(fed, feed, number, shelf, feel);
    } else if (feed.form == FeedForm::ball) {
        throw InputError({"unfit-state", "nothing in a ball of " + name_of(feed) + " takes water, so it does not hold",
                          "feed it loose or in a cup, or together with a mix", feed_part_subject(number, 1)});
    }
    return fed;
}

FedMix not_pressed(FedMix fed) {
    if (fed.state != MixState::squeezed) return fed;
    const bool pellets = is_pellets_alone(fed.mix);
    if (pellets) fed.wetness = wetness_of_pellets(MixState::riddled);
    fed.state = usual_state(fed.wetness);
    return fed;
}

FedPerDry per_dry(const FedMix& fed, const MixNumbers& numbers) {
    const WettedMix wetted = wet(numbers, fed.wetness);
    const bool too_wet = wetted.too_wet && fed.wetness > 0;
    const Ratio wetness = std::min<double>(fed.wetness > 0 ? wetted.wetness : fed.wetness, wettest);
    const MixState state = can_be(fed.state, wetness) ? fed.state : usual_state(wetness);
    FedPerDry result{wetted.wet_mass,  wet_volume(pack(numbers, wetted), state, wetness),
                     wetted.water,     0.0,
                     wetted.additives, too_wet};
    double soaked = 0;
    for (const SolidNumbers& part : numbers.solids) soaked += part.share * (part.carried + part.film);
    result.soak_water = soaked;
    return result;
}

Mass dry_mass_of(const FeedSize& size, const FedPerDry& each) {
    return std::visit(DryMassIn{each}, size);
}

}  // namespace baitwright
