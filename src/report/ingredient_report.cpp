#include "report/entry_replies.h"

#include <fmt/format.h>

#include "bait/caution.h"
#include "bait/ingredient_cautions.h"
#include "bait/ingredient_facts.h"
#include "bait/pricing.h"
#include "quantities/quantity_text.h"
#include "report/display.h"
#include "report/keeping_report.h"
#include "report/price_report.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string spaced(std::string_view key) {
    std::string text(key);
    for (char& c : text)
        if (c == '_') c = ' ';
    return text;
}

std::string price_text(const Ingredient& ingredient) {
    const Pack* pack = pricing_pack(ingredient);
    if (!pack) return "";
    return money_text(*pack->price) + " / " + shown_pack(*pack);
}

std::string density_cell(const Ingredient& i) {
    const bool liquid = i.kind == IngredientKind::liquid;
    return fmt::format("{:.0f} g/l", (liquid ? i.density.value : i.loose_density.value).in(gram_per_litre));
}

std::string marks_cell(const Ingredient& i) {
    if (!takes_water(i.kind)) return "";
    return shown_ratio(i.absorption.value) + " / " + shown_ratio(i.slump.value);
}

template <class D>
Json property_json(const PropertyFacts<D>& facts, const Property<Quantity<D>>& property) {
    return {{"value", property.value.in(facts.unit)},
            {"unit", facts.symbol},
            {"spread", double(property.spread)},
            {"source", source_text(property.source)}};
}

template <class D>
std::string value_cell(const PropertyFacts<D>& facts, const Property<Quantity<D>>& property) {
    const std::string number = fmt::format("{:.4g}", property.value.in(facts.unit));
    return facts.symbol.empty() ? number : number + " " + std::string(facts.symbol);
}

Json record_of(const Ingredient& i) {
    Json record{{"name", i.name}, {"kind", name_of(i.kind)}};
    visit_properties(i, [&](const auto& facts, const auto& property) {
        if (need_of(i.kind, facts.key) == Need::absent) return;
        record[std::string(facts.key)] = property.known() ? property_json(facts, property) : Json();
    });
    Json composition = Json::object();
    visit_composition(i.composition, [&](std::string_view key, const Property<Ratio>& share) {
        composition[std::string(key)] =
            share.known() ? property_json(PropertyFacts<NoDimension>{key, "%", percent, 0, 100, false, 0}, share)
                          : Json();
    });
    record["composition"] = std::move(composition);
    record["colour"] = i.colour.empty() ? Json() : Json(i.colour);
    record["solute"] = i.solute.empty() ? Json() : Json(i.solute);
    record["label_dose"] = i.label_dose ? Json(dose_rate_text(*i.label_dose)) : Json();
    record["keeps"] = keeping_json(i.keeps);
    record["packs"] = Json::array();
    for (const Pack& pack : i.packs) record["packs"].push_back(pack_json(pack));
    record["cautions"] = i.cautions;
    record["note"] = i.note.empty() ? Json() : Json(i.note);
    return record;
}

std::string composition_text(const Composition& composition) {
    std::string text, source;
    visit_composition(composition, [&](std::string_view key, const Property<Ratio>& share) {
        if (!share.known()) return;
        text += (text.empty() ? "" : ", ") + std::string(key) + " " + shown_percent(share.value);
        source = source_text(share.source);
    });
    return text.empty() ? text : text + " (" + source + ")";
}

Told ingredient_list_told(const EachIngredient& each) {
    TextTable table({Align::left, Align::left, Align::right, Align::right, Align::right});
    table.row({"ingredient", "kind", "loose", "holds / slumps", "price"});
    each([&](const Ingredient& i) {
        table.row({i.name, std::string(name_of(i.kind)), density_cell(i), marks_cell(i), price_text(i)});
    });
    Told told;
    told.table(std::move(table));
    return told;
}

Json ingredient_list_json(const EachIngredient& each) {
    Json json = json_record("ingredient list", {});
    json["ingredients"] = Json::array();
    each([&](const Ingredient& ingredient) { json["ingredients"].push_back(record_of(ingredient)); });
    return json;
}

Told ingredient_told(const Ingredient& i) {
    Told told, sources;
    told.title(i.name + ", " + std::string(name_of(i.kind)) + (i.colour.empty() ? "" : ", " + i.colour));
    TextTable table({Align::left, Align::right, Align::right, Align::left});
    table.row({"property", "value", "spread", "source"});
    visit_properties(i, [&](const auto& facts, const auto& property) {
        if (!property.known()) return;
        std::string source = source_text(property.source);
        constexpr std::size_t room = 36;
        if (text_width(source) > room) {
            sources.entry("  " + spaced(facts.key) + ": ", source);
            source = "see below";
        }
        table.row({spaced(facts.key), value_cell(facts, property), shown_percent(property.spread), source});
    });
    told.table(std::move(table));
    told.gap();
    told.add(std::move(sources));
    for (const Pack& pack : i.packs)
        told.line("Pack", fmt::format("{}{}{}{}", shown_pack(pack),
                                      pack.price ? " at " + money_text(*pack.price) : ", no price known",
                                      pack.shop.empty() ? "" : " from " + pack.shop,
                                      pack.on ? " on " + date_text(*pack.on) : ""));
    if (i.label_dose) told.line("Label", "at most " + dose_rate_text(*i.label_dose));
    if (const std::string keeps = keeping_text(i.keeps); !keeps.empty()) told.line("Keeps", keeps);
    if (const std::string made_of = composition_text(i.composition); !made_of.empty()) told.line("Made of", made_of);
    if (!i.note.empty()) told.line("Note", i.note);
    told.take_care(caution_sentences(caution_words(i)));
    return told;
}

Json ingredient_json(const Ingredient& ingredient) {
    Json json = json_record("ingredient show", {});
    json.update(record_of(ingredient));
    return json;
}

}  // namespace

Reply ingredient_list_reply(EachIngredient each) {
    return reply_of(std::move(each), ingredient_list_told, ingredient_list_json);
}

Reply ingredient_reply(Ingredient ingredient) {
    return reply_of(std::move(ingredient), ingredient_told, ingredient_json);
}

}  // namespace baitwright
