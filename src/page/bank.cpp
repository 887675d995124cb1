#include "page/bank.h"

#include <map>

#include "page/advice_data.h"
#include "page/learnt_data.h"
#include "page/library_data.h"
#include "page/mixes_fed.h"
#include "page/own_things.h"
#include "page/phone_errors.h"
#include "quantities/units.h"
#include "quantities/worded.h"
#include "questions/cost_question.h"
#include "questions/shown_units_of.h"
#include "report/shown_units.h"

namespace baitwright {

namespace {

std::vector<std::string> texts_of(const Json& request, std::string_view key) {
    const Json* texts = request.find(key);
    return texts ? texts->texts() : std::vector<std::string>{};
}

std::string text_of(const Json& request, std::string_view key) {
    const Json* text = request.find(key);
    return text && !text->is_null() ? text->text() : std::string();
}

/// `usual` is what the page was made with; a question may say otherwise.
Arguments arguments_of(const Json& request, Usual usual) {
    std::map<std::string, std::vector<std::string>> flags;
    if (const Json* given = request.find("flags"))
        for (const std::string& flag : given->keys()) flags[flag] = given->at(flag).texts();
    if (const Json* given = request.find("usual"))
        for (const std::string& key : given->keys()) usual[key] = given->at(key).texts();
    return {texts_of(request, "words"), std::move(flags), std::move(usual)};
}

std::string feel_of_part(const Feed& feed, const FeedPart& part, const Recipe& recipe) {
    if (!part.feel.empty()) return part.feel;
    return feed.feel.empty() ? recipe.feel : feed.feel;
}

/// The feel of each mix where it is fed first.
Json feels_of(const Strategy& strategy, const Shelf& shelf) {
    Json feels = Json::object();
    for (const Feed& feed : strategy.feeds)
        for (const FeedPart& part : feed.parts)
            if (const auto recipe = shelf.find_recipe(part.of); recipe && !feels.contains(recipe->name))
                feels[recipe->name] = feel_of_part(feed, part, *recipe);
    return feels;
}

/// As `put` takes them.
Json together_json(const std::vector<Recipe>& mixes) {
    Json all = Json::array();
    for (const Recipe& mix : mixes) {
        Json parts = Json::array();
        for (const Part& part : mix.parts)
            parts.push_back({{"of", part.of},
                             {"share", std::get<Share>(part.amount).parts},
                             {"prepare", part.prepare == Preparation::soaked ? Json("soaked") : Json()}});
        all.push_back({{"name", mix.name}, {"feel", mix.feel}, {"parts", std::move(parts)}});
    }
    return all;
}

Json strategy_entry(const Strategy& strategy, const Shelf& shelf) {
    const WaterSetting& water = strategy.water;
    const MixesFed fed = mixes_fed(strategy, shelf);
    return {{"name", strategy.name},
            {"length_minutes", strategy.length.in(minute)},
            {"depth_m", water.depth ? Json(water.depth->in(metre)) : Json()},
            {"tow_cm_s", water.tow ? Json(water.tow->in(centimetre_per_second)) : Json()},
            {"water_temp_c", water.temperature ? Json(water.temperature->in_celsius()) : Json()},
            {"mixes", fed.names},
            {"together", together_json(fed.together)},
            {"feels", feels_of(strategy, shelf)}};
}

/// What there is to choose from.
Json contents(const Shelf& shelf) {
    Json json = Json::object();
    for (const char* key : {"mixes", "feels", "strategies", "ingredients", "pellets"}) json[key] = Json::array();
    for (const std::string& name : shelf.recipe_names())
        json["mixes"].push_back({{"name", name}, {"feel", shelf.recipe(name).feel}});
    for (const Feel& feel : shelf.feels()) json["feels"].push_back(feel.name);
    for (const std::string& name : shelf.strategy_names())
        json["strategies"].push_back(strategy_entry(shelf.strategy(name), shelf));
    for (const std::string& name : shelf.ingredient_names()) {
        const IngredientKind kind = shelf.ingredient(name).kind;
        json["ingredients"].push_back({{"name", name}, {"kind", name_of(kind)}});
        if (kind == IngredientKind::pellet || kind == IngredientKind::expander)
            json["pellets"].push_back({{"name", name}, {"kind", name_of(kind)}});
    }
    return json;
}

Json fault_reply(const std::string& code, const std::string& message) {
    return json_of_faults({Fault{code, message, "open the page afresh; if it stays so, make the page anew"}});
}

}  // namespace

void Bank::add_usual(const Json& request) {
    const Json* usual = request.find("usual");
    if (!usual || usual->is_null()) return;
    for (Ingredient& ingredient : library_in(*usual).ingredients) opened_.shelf.put_usual(std::move(ingredient));
}

void Bank::add_library(const Json& request) {
    CarriedLibrary library = library_in(request.at("library"));
    for (Ingredient& ingredient : library.ingredients) opened_.shelf.put(std::move(ingredient));
    for (Recipe& recipe : library.recipes) opened_.shelf.put(std::move(recipe));
    for (Strategy& strategy : library.strategies) opened_.shelf.put(std::move(strategy));
    if (!library.feels.empty()) opened_.shelf.put(std::move(library.feels));
    if (!library.venues.empty()) opened_.venues = std::move(library.venues);
}

Json Bank::answer(const Json& request) {
    const std::string what = request.at("ask").text();
    if (what == "open") {
        add_usual(request);
        add_library(request);
        if (const Json* learnt = request.find("learnt"); learnt && !learnt->is_null())
            put_learnt_data(*learnt, opened_.shelf);
        if (const Json* advice = request.find("advice"); advice && !advice->is_null())
            opened_.advice = advice_in(*advice);
        for (const char* key : {"units", "currency"})
            if (const std::string word = text_of(request, key); !word.empty()) opened_.usual[key] = {word};
        opened_.today = parse_date(request.at("today").text());
        opened_.have = stock_told(Arguments({}, {{"--have", texts_of(request, "have")}}), opened_.shelf);
        const std::string made_on = text_of(request, "made_on");
        opened_.made_on = made_on.empty() ? opened_.today : parse_date(made_on);
        opened_.forget_own();
        return contents(opened_.here());
    }
    const Arguments arguments = arguments_of(request, opened_.usual);
    const UnitsShownHere asked_in(shown_units_of(arguments));
    if (auto own = own_thing(opened_, what, request, arguments)) {
        if (what == "put" || what == "anew") own->update(contents(opened_.here()));
        return *std::move(own);
    }
    return answer_of(opened_, what, arguments, wanted_of(request));
}

Json Bank::ask(const Json& request) {
    const WordedHere on_a_phone(WordsFor::phone);
    try {
        return answer(request);
    } catch (const Error& error) {
        return phone_errors(error.faults());
    } catch (const std::exception& error) {
        return fault_reply("bug", std::string("the engine failed: ") + error.what());
    }
}

}  // namespace baitwright
