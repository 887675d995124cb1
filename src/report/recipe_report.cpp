#include "report/entry_replies.h"

#include <fmt/format.h>

#include "quantities/units.h"
#include "report/display.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

struct AmountText {
    std::string operator()(Mass mass) const { return shown_mass(mass); }
    std::string operator()(Volume volume) const { return shown_volume(volume) + in_brackets({other_volume(volume)}); }
    std::string operator()(WholePacks packs) const { return fmt::format("{:g} packs", packs.count); }
    std::string operator()(Share share) const { return fmt::format("{:g} parts", share.parts); }
};

struct AmountJson {
    Json& part;
    void operator()(Mass mass) const { part["mass_g"] = mass.in(gram); }
    void operator()(Volume volume) const { part["volume_ml"] = volume.in(millilitre); }
    void operator()(WholePacks packs) const { part["packs"] = packs.count; }
    void operator()(Share share) const { part["share"] = share.parts; }
};

Json record_of(const Recipe& recipe) {
    Json record{{"name", recipe.name},
                {"feel", recipe.feel.empty() ? "firm" : recipe.feel},
                {"purpose", text_or_null(recipe.purpose)},
                {"avoid", text_or_null(recipe.avoid)},
                {"why", text_or_null(recipe.why)},
                {"note", text_or_null(recipe.note)},
                {"parts", Json::array()},
                {"doses", Json::array()}};
    for (const Part& part : recipe.parts) {
        Json json{{"of", part.of}, {"mass_g", nullptr}, {"volume_ml", nullptr}, {"packs", nullptr}, {"share", nullptr}};
        std::visit(AmountJson{json}, part.amount);
        json["prepare"] = part.prepare == Preparation::soaked ? Json("soaked") : Json();
        record["parts"].push_back(std::move(json));
    }
    for (const Dose& dose : recipe.doses)
        record["doses"].push_back({{"of", dose.of}, {"amount", dose_rate_text(dose.rate)}});
    return record;
}

Told recipe_list_told(const std::vector<Recipe>& recipes) {
    Told told;
    for (const Recipe& recipe : recipes)
        told.entry(fmt::format("  {:<20}  {:<8}  ", recipe.name, recipe.feel.empty() ? "firm" : recipe.feel),
                   recipe.purpose);
    return told;
}

Json recipe_list_json(const std::vector<Recipe>& recipes) {
    Json json = json_record("recipe list", {});
    json["recipes"] = Json::array();
    for (const Recipe& recipe : recipes) json["recipes"].push_back(record_of(recipe));
    return json;
}

Told recipe_told(const Recipe& recipe) {
    Told told;
    told.title(recipe.name + ", " + (recipe.feel.empty() ? "firm" : recipe.feel));
    TextTable table({Align::left, Align::right, Align::left});
    for (const Part& part : recipe.parts)
        table.row(
            {part.of, std::visit(AmountText{}, part.amount), part.prepare == Preparation::soaked ? "soaked" : ""});
    for (const Dose& dose : recipe.doses) table.row({dose.of, dose_rate_text(dose.rate), ""});
    told.table(std::move(table));
    told.gap();
    if (!recipe.purpose.empty()) told.line("For", recipe.purpose);
    if (!recipe.avoid.empty()) told.line("Not for", recipe.avoid);
    if (!recipe.why.empty()) told.line("Why", recipe.why);
    if (!recipe.note.empty()) told.line("Note", recipe.note);
    return told;
}

Json recipe_json(const Recipe& recipe) {
    Json json = json_record("recipe show", {});
    json.update(record_of(recipe));
    return json;
}

Rows recipe_list_rows(const std::vector<Recipe>& recipes) {
    Rows rows{{"name", "feel", "purpose", "avoid", "why"}};
    for (const Recipe& recipe : recipes)
        rows.push_back(
            {recipe.name, recipe.feel.empty() ? "firm" : recipe.feel, recipe.purpose, recipe.avoid, recipe.why});
    return rows;
}

}  // namespace

Reply recipe_list_reply(std::vector<Recipe> recipes) {
    return reply_of(std::move(recipes), recipe_list_told, recipe_list_json, recipe_list_rows);
}

Reply recipe_reply(Recipe recipe) {
    return reply_of(std::move(recipe), recipe_told, recipe_json);
}

}  // namespace baitwright
