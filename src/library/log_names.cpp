#include "library/log_names.h"

#include <algorithm>
#include <array>

#include "answers/shared/wanted_feel.h"
#include "bait/pellets_alone.h"
#include "library/named.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

std::vector<std::string> bait_names(const Shelf& shelf) {
    std::vector<std::string> names = shelf.recipe_names();
    for (std::string& name : shelf.ingredient_names()) names.push_back(std::move(name));
    return names;
}

/// What is said of a name that nothing has.
constexpr std::array<const char*, 4> what_is_called{"mix or ingredient", "ingredient", "strategy", "venue"};

}  // namespace

struct LogNames::Completing {
    LogNames& names;
    const BagMoistures& moistures;

    void operator()(LoggedSession& session) const {
        session.strategy = names.written(Kind::strategy, session.strategy);
        session.venue = names.written(Kind::venue, session.venue);
    }
    void operator()(LoggedPutIn& put_in) const { put_in.of = names.written(Kind::feed, put_in.of); }
    void operator()(LoggedUse& use) const { use.of = names.written(Kind::bait, use.of); }
    void operator()(LoggedCatch&) const {}
    void operator()(LoggedMix& mix) const {
        mix.of = names.written(Kind::bait, mix.of);
        const ResolvedMix* resolved = names.mix_called(mix.of);
        if (resolved && is_pellets_alone(*resolved)) return names.take_as_soaked(mix);
        mix.feel = names.feel(mix.feel);
        read_feel(mix, names.feels_);
        if (!resolved) return;
        weigh_parts(mix, *resolved, moistures);
        names.refuse(mix.dry && mix.water && mix.parts.empty(), "takes-no-water", in_quotes(mix.of) + " takes no water",
                     "log the mix that it went into, or what was used of it in a session");
    }
    void operator()(LoggedSoak& soak) const {
        soak.of = names.written(Kind::ingredient, soak.of);
        const auto known = names.shelf_.find_ingredient(soak.of);
        names.refuse(known && known->kind != IngredientKind::pellet && known->kind != IngredientKind::expander,
                     "not-a-pellet", in_quotes(soak.of) + " is no pellet, and only pellets are soaked here",
                     "see them with: baitwright ingredient list --kind pellet");
    }
    void operator()(LoggedWeight& weight) const {
        weight.of = names.written(Kind::bait, weight.of);
        names.refuse(!weight.feel.empty() && !names.shelf_.find_recipe(weight.of), "unfit-flag",
                     "--feel goes with a mix, and " + in_quotes(weight.of) + " is an ingredient, weighed dry",
                     "leave it out");
        weight.feel = names.feel_of(weight.of, weight.feel);
    }
    void operator()(LoggedLook& look) const {
        look.of = names.written(Kind::bait, look.of);
        look.feel = names.feel_of(look.of, look.feel);
    }
    void operator()(LoggedBag& bag) const { bag.of = names.written(Kind::ingredient, bag.of); }
    void operator()(LogUndone&) const {}
};

void LogNames::complete(LogEntry& entry, const BagMoistures& moistures) {
    std::visit(Completing{*this, moistures}, entry.what);
}

std::string LogNames::written(Kind kind, const std::string& word) {
    if (word.empty()) return word;
    auto& name = names_[{kind, folded_name(word)}];
    if (name.empty()) name = look_up(kind, word);
    return name;
}

std::optional<std::string> LogNames::found(Kind kind, const std::string& word) const {
    if (word.empty()) return std::nullopt;
    if (kind == Kind::strategy) {
        if (const auto strategy = shelf_.find_strategy(word)) return strategy->name;
        return said_name(word, shelf_.strategy_names()).name;
    }
    if (kind == Kind::venue) {
        std::vector<std::string> names;
        for (const Venue& venue : all_venues(place_)) names.push_back(venue.name);
        return said_name(word, names).name;
    }
    const bool mixes = kind != Kind::ingredient;
    if (mixes)
        if (const auto recipe = shelf_.find_recipe(word)) return recipe->name;
    if (const auto ingredient = shelf_.find_ingredient(word)) return ingredient->name;
    return said_name(word, mixes ? bait_names(shelf_) : shelf_.ingredient_names()).name;
}

std::string LogNames::look_up(Kind kind, const std::string& word) {
    if (auto name = found(kind, word)) return *std::move(name);
    if (kind == Kind::feed) return word;
    if (unknown_ == UnknownName::kept) {
        warn(what_is_called[static_cast<std::size_t>(kind)], word);
        return word;
    }
    switch (kind) {  // each tells what may be meant
        case Kind::strategy:
            return shelf_.strategy(word).name;
        case Kind::venue:
            return named_venue(word, place_, shelf_).value.name;
        case Kind::ingredient:
            return shelf_.ingredient(word).name;
        case Kind::bait:
        case Kind::feed:
            break;
    }
    return named_bait(word, shelf_, BaitUse::dropped).value.name;
}

std::string LogNames::feel(const std::string& word) {
    if (word.empty()) return word;
    if (const Feel* known = find_feel(feels_, word)) return known->name;
    if (unknown_ == UnknownName::refused) return wanted_feel(feels_, Feel{}, word).name;
    warn("feel", word);
    return word;
}

bool LogNames::tells_of_feel(const std::string& of, const std::string& feel) {
    if (feel.empty() || folded_name(feel) == feel_of_pellets) return false;
    constexpr const char* no_feel = "no-feel";
    const std::string what = in_quotes(of) + " is pellets alone: they are soaked and drained, and have no feel";
    refuse(true, no_feel, what,
           "leave the feel out; what teaches how they drink is a weighed soak: baitwright log soak");
    warn({no_feel, what + ", so what you wrote of one is left out"});
    return true;
}

void LogNames::take_as_soaked(LoggedMix& mix) {
    if (!tells_of_feel(mix.of, mix.feel) && mix.wetness)
        static_cast<void>(tells_of_feel(mix.of, "wetness " + number_text(*mix.wetness)));
    mix.feel.clear();
    mix.wetness.reset();
    mix.within = 0.0;
    mix.wetting = Mass{};
    mix.parts.clear();
}

std::string LogNames::feel_of(const std::string& of, const std::string& word) {
    if (word.empty() || !shelf_.find_recipe(of)) return feel(word);
    const ResolvedMix* mix = mix_called(of);
    if (!mix || !is_pellets_alone(*mix)) return feel(word);
    static_cast<void>(tells_of_feel(of, word));
    return {};
}

void LogNames::refuse(bool unfit, const char* code, const std::string& message, const char* hint) const {
    if (unfit && unknown_ == UnknownName::refused) throw UsageError(code, message, hint);
}

const ResolvedMix* LogNames::mix_called(const std::string& name) {
    const auto known = mixes_.find(name);
    if (known != mixes_.end()) return known->second ? &*known->second : nullptr;
    auto& mix = mixes_[name];
    if (!shelf_.find_recipe(name) && !shelf_.find_ingredient(name)) return nullptr;
    try {
        mix = resolve_as_made(named_bait(name, shelf_, BaitUse::wetted).value, shelf_);
    } catch (const Error& error) {
        if (unknown_ == UnknownName::refused) throw;
        warnings_.push_back({"unweighed", "what went into " + in_quotes(name) + " is not known: " + error.what()});
    }
    return mix ? &*mix : nullptr;
}

void LogNames::warn(const std::string& what, const std::string& word) {
    warn({"unknown-name",
          "no " + what + " here is called " + in_quotes(word) + "; it stands in the log as you wrote it"});
}

void LogNames::warn(Warning warning) {
    const bool told = std::any_of(warnings_.begin(), warnings_.end(),
                                  [&](const Warning& other) { return other.message == warning.message; });
    if (!told) warnings_.push_back(std::move(warning));
}

}  // namespace baitwright
