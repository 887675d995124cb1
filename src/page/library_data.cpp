#include "page/library_data.h"

#include "page/data_values.h"
#include "page/ingredient_data.h"
#include "page/strategy_data.h"

namespace baitwright {

namespace {

Json part_data(const Part& part) {
    Json data{{"of", part.of}, {"amount", held_data(part.amount)}};
    if (part.prepare == Preparation::soaked) data["soaked"] = true;
    return data;
}

Part part_in(const Json& data) {
    const Preparation prepare = data.contains("soaked") ? Preparation::soaked : Preparation::as_bought;
    return {data["of"].text(), held_in<PartAmount>(data["amount"]), prepare};
}

/// Each of its texts with its key, but for the name.
template <class ARecipe, class Visit>
void visit_recipe_texts(ARecipe& recipe, Visit&& visit) {
    visit("feel", recipe.feel);
    visit("purpose", recipe.purpose);
    visit("avoid", recipe.avoid);
    visit("why", recipe.why);
    visit("note", recipe.note);
}

Json recipe_data(const Recipe& recipe) {
    Json data{{"name", recipe.name}};
    visit_recipe_texts(recipe, [&](const char* key, const std::string& text) { put_text(data, key, text); });
    put_list(data, "parts", recipe.parts, part_data);
    put_list(data, "doses", recipe.doses, [](const Dose& dose) {
        return Json{{"of", dose.of}, {"rate", rate_data(dose.rate)}};
    });
    return data;
}

Recipe recipe_in(const Json& data) {
    Recipe recipe;
    recipe.name = data["name"].text();
    visit_recipe_texts(recipe, [&](const char* key, std::string& text) { text = text_in(data, key); });
    take_list(data, "parts", recipe.parts, part_in);
    take_list(data, "doses", recipe.doses, [](const Json& dose) {
        return Dose{dose["of"].text(), rate_in(dose["rate"])};
    });
    return recipe;
}

/// [which], with the kind or the name.
Json subject_data(const RuleSubject& subject) {
    Json data = Json::array({subject.index()});
    if (const auto* kind = std::get_if<IngredientKind>(&subject)) data.push_back(static_cast<int>(*kind));
    if (const auto* one = std::get_if<OneIngredient>(&subject)) data.push_back(one->name);
    return data;
}

RuleSubject subject_in(const Json& data) {
    switch (whole_in(data[0])) {
        case 0:
            return AllFeed{};
        case 1:
            return Groundbait{};
        case 2:
            return static_cast<IngredientKind>(whole_in(data[1]));
        default:
            return OneIngredient{data[1].text()};
    }
}

Json limit_data(const VenueLimit& limit) {
    return {{"subject", subject_data(limit.subject)},
            {"most", held_data(limit.most)},
            {"reckoned", static_cast<int>(limit.reckoned)},
            {"per", static_cast<int>(limit.per)}};
}

VenueLimit limit_in(const Json& data) {
    return {subject_in(data["subject"]), held_in<std::variant<Mass, Volume>>(data["most"]),
            static_cast<VenueLimit::Reckoned>(whole_in(data["reckoned"])),
            static_cast<VenueLimit::Per>(whole_in(data["per"]))};
}

Json venue_data(const Venue& venue) {
    Json data{{"name", venue.name}};
    put_text(data, "note", venue.note);
    put_list(data, "limits", venue.limits, limit_data);
    put_list(data, "bans", venue.bans, [](const VenueBan& ban) {
        return Json{{"subject", subject_data(ban.subject)}, {"why", ban.why}};
    });
    put_texts(data, "rules", venue.rules);
    return data;
}

Venue venue_in(const Json& data) {
    Venue venue;
    venue.name = data["name"].text();
    venue.note = text_in(data, "note");
    take_list(data, "limits", venue.limits, limit_in);
    take_list(data, "bans", venue.bans, [](const Json& ban) {
        return VenueBan{subject_in(ban["subject"]), ban["why"].text()};
    });
    venue.rules = texts_in(data, "rules");
    return venue;
}

Json carried_feel_data(const Feel& feel) {
    return {{"name", feel.name}, {"aim", feel.aim.si()}, {"below", feel.below.si()}, {"purpose", feel.purpose}};
}

Feel carried_feel_in(const Json& data) {
    return {data["name"].text(), data["aim"].number(), data["below"].number(), data["purpose"].text()};
}

}  // namespace

Json library_data(const CarriedLibrary& library) {
    SourceTable sources;
    const Json ingredients = list_data(
        library.ingredients, [&](const Ingredient& ingredient) { return ingredient_data(ingredient, sources); });
    return {{"sources", sources.data()},
            {"ingredients", ingredients},
            {"mixes", list_data(library.recipes, recipe_data)},
            {"strategies", list_data(library.strategies, strategy_data)},
            {"venues", list_data(library.venues, venue_data)},
            {"feels", list_data(library.feels, carried_feel_data)}};
}

CarriedLibrary library_in(const Json& data) {
    CarriedLibrary library;
    const SourceTable sources(data["sources"]);
    take_list(data, "ingredients", library.ingredients,
              [&](const Json& ingredient) { return ingredient_in(ingredient, sources); });
    take_list(data, "mixes", library.recipes, recipe_in);
    take_list(data, "strategies", library.strategies, strategy_in);
    take_list(data, "venues", library.venues, venue_in);
    take_list(data, "feels", library.feels, carried_feel_in);
    return library;
}

}  // namespace baitwright
