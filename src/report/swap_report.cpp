#include "report/replies.h"

#include <fmt/format.h>

#include <cmath>

#include "bait/caution.h"
#include "quantities/listed.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/rate_text.h"
#include "report/shown_units.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

TextTable shares_table(const SwapAnswer& answer) {
    TextTable table({Align::left, Align::right, Align::right});
    table.row({"made of", "was", "is"});
    const auto name = [&](const SwapShare& share) {
        return share.name + (share.prepare == Preparation::soaked && !answer.soaked_alone ? " (soaked)" : "");
    };
    for (const SwapShare& share : answer.gone) table.row({name(share), shown_percent(share.was), "out"});
    for (const SwapShare& share : answer.stand_ins) table.row({name(share), "new", shown_percent(share.is)});
    for (const SwapShare& share : answer.rest)
        table.row({name(share), shown_percent(share.was), shown_percent(share.is)});
    return table;
}

std::string value_text(const SwapChange& change, double value) {
    if (change.name == "grain size") return fmt::format("{} mm", significant(std::exp(value), 2));
    if (change.symbol == "g/g") return fmt::format("{:.2f} g/g", value);
    if (change.symbol == "g/l") return significant(value, 2) + " g/l";
    if (change.symbol == "%") return shown_percent(value / 100);
    // Adding nothing takes the sign off what rounds to nothing.
    if (change.name == "binder") return fmt::format("{:+.1f}", std::round(10 * value) / 10 + 0.0);
    return fmt::format("{:.0f}", std::round(value) + 0.0);
}

bool is_colour(const SwapChange& change) {
    return change.name == "lightness" || change.name == "redness" || change.name == "yellowness";
}

/// "lighter and yellower", or empty where nobody would see it.
std::string colour_text(const SwapAnswer& answer) {
    std::vector<std::string> words;
    for (const SwapChange& change : answer.changes) {
        if (!is_colour(change) || change.steps < 0.5) continue;
        const bool more = change.is > change.was;
        if (change.name == "lightness") words.emplace_back(more ? "lighter" : "darker");
        if (change.name == "redness") words.emplace_back(more ? "redder" : "less red");
        if (change.name == "yellowness") words.emplace_back(more ? "yellower" : "less yellow");
    }
    return listed(words);
}

TextTable changes_table(const SwapAnswer& answer) {
    TextTable table({Align::left, Align::right, Align::right, Align::left});
    table.row({"of the dry mix", "was", "is", ""});
    for (const SwapChange& change : answer.changes)
        if (!is_colour(change))
            table.row({change.name, value_text(change, change.was), value_text(change, change.is),
                       change.steps >= 1 ? "you will notice" : ""});
    return table;
}

std::string water_text(const SwapAnswer& answer) {
    const bool imperial = units_shown().system == UnitSystem::imperial;
    const Mass dry = imperial ? 1.0 * pound : 1.0 * kilogram;
    const std::string was = shown_water(jug_water(answer.water_was * dry)),
                      is = shown_water(jug_water(answer.water_is * dry));
    const char* each = imperial ? "a pound" : "a kilo";
    if (answer.soaked_alone)
        return was == is ? fmt::format("Soaked as before, they keep {} {}.", is, each)
                         : fmt::format("Soaked, they keep {} {}, in place of {}.", is, each, was);
    if (was == is) return fmt::format("As before: {} {} for {}.", is, each, answer.feel);
    return fmt::format("{} {} for {}, in place of {}.", is, each, answer.feel, was);
}

std::string feel_text(const SwapAnswer& answer) {
    std::string text;
    if (!answer.soaked_alone)
        text = fmt::format("With the old water it would be {} (wetness {:.2f}). ", answer.feel_of_old_water,
                           double(answer.wetness_of_old_water));
    if (answer.hold > 1.1)
        text += fmt::format("A ball holds about {} times as long.", significant(answer.hold, 2));
    else if (answer.hold < 0.9)
        text += fmt::format("A ball breaks up in about {} of the time.", shown_percent(answer.hold));
    else
        text += "A ball holds about as long.";
    return text;
}

std::string closeness_text(const SwapAnswer& answer) {
    std::string text = fmt::format("{:.1f} noticeable differences in all", answer.distance);
    if (answer.least_distance < answer.distance - 0.05)
        text += fmt::format("; with any number of stand-ins it could be {:.1f}", answer.least_distance);
    text += ".";
    if (!answer.not_compared.empty()) text += " Not known, and so not compared: " + listed(answer.not_compared) + ".";
    return text;
}

Json minor_or_null(const std::optional<double>& minor) {
    return minor ? Json(*minor) : Json();
}

Json share_json(const SwapShare& share) {
    return {{"name", share.name},
            {"share", double(share.is)},
            {"share_was", double(share.was)},
            {"prepare", share.prepare == Preparation::soaked ? Json("soaked") : Json()}};
}

/// "loose density" in "g/l" is "loose_density_g_l"; percents are told as ratios.
std::string key_of(const SwapChange& change) {
    std::string key = change.name == "grain size" ? "grain_size_mm" : change.name;
    for (char& c : key) c = c == ' ' ? '_' : c;
    return key + (change.symbol == "g/g" ? "_g_g" : change.symbol == "g/l" ? "_g_l" : "");
}

double json_value(const SwapChange& change, double value) {
    if (change.name == "grain size") return std::exp(value);
    return change.symbol == "%" ? value / 100 : value;
}

Told swap_told(const SwapAnswer& answer) {
    Told told;
    told.title(fmt::format("{} without {}: the closest match", answer.recipe, listed(answer.without)));
    told.table(shares_table(answer));
    told.gap();
    told.table(changes_table(answer));
    told.gap();
    const std::string colour = colour_text(answer);
    told.line("Colour", colour.empty() ? "About as before." : sentence(colour));
    told.line("Water", water_text(answer));
    told.line("Feel", feel_text(answer));
    if (answer.price_was && answer.price_is)
        told.line("Price", fmt::format("{} a kilo, in place of {}, by the smallest packs.",
                                       shown_rate(*answer.price_is, *answer.currency),
                                       shown_rate(*answer.price_was, *answer.currency)));
    told.line("How close", closeness_text(answer));
    told.mind(answer.warnings);
    for (const std::string& caution : caution_sentences(answer.new_cautions))
        told.line("Take care", "New in it. " + caution);
    return told;
}

Json swap_json(const SwapAnswer& answer) {
    Json json = json_record("swap", answer.warnings);
    json["recipe"] = answer.recipe;
    json["without"] = answer.without;
    json["status"] = "optimal";
    json["currency"] = answer.currency ? Json(answer.currency->code) : Json();
    json["cost_per_kg_minor"] = minor_or_null(answer.price_is);
    json["cost_per_kg_was_minor"] = minor_or_null(answer.price_was);
    json["out"] = Json::array();
    for (const SwapShare& share : answer.gone)
        json["out"].push_back({{"name", share.name}, {"share_was", double(share.was)}});
    json["shares"] = Json::array();
    for (const SwapShare& share : answer.stand_ins) json["shares"].push_back(share_json(share));
    for (const SwapShare& share : answer.rest) json["shares"].push_back(share_json(share));
    json["properties"] = Json::object();
    json["properties_were"] = Json::object();
    json["steps"] = Json::object();
    for (const SwapChange& change : answer.changes) {
        json["properties"][key_of(change)] = json_value(change, change.is);
        json["properties_were"][key_of(change)] = json_value(change, change.was);
        json["steps"][key_of(change)] = change.steps;
    }
    json["not_compared"] = answer.not_compared;
    json["distance_steps"] = answer.distance;
    json["least_distance_steps"] = answer.least_distance;
    json["binding"] = Json::array();
    json["conflicts"] = Json::array();
    json["feel"] = answer.feel;
    json["water_g_per_kg"] = answer.water_is * 1000.0;
    json["water_was_g_per_kg"] = answer.water_was * 1000.0;
    json["wetness_of_old_water"] = double(answer.wetness_of_old_water);
    json["feel_of_old_water"] = answer.feel_of_old_water;
    json["hold_ratio"] = answer.hold;
    json["new_cautions"] = answer.new_cautions;
    return json;
}

Rows swap_rows(const SwapAnswer& answer) {
    Rows rows{{"name", "share_was", "share"}};
    for (const std::vector<SwapShare>* shares : {&answer.gone, &answer.stand_ins, &answer.rest})
        for (const SwapShare& share : *shares)
            rows.push_back({share.name, number_text(share.was), number_text(share.is)});
    return rows;
}

}  // namespace

Reply swap_reply(SwapAnswer answer) {
    return reply_of(std::move(answer), swap_told, swap_json, swap_rows);
}

}  // namespace baitwright
