#include "report/mix_json.h"

#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/learnt_json.h"
#include "report/mix_steps.h"
#include "report/mix_targets_json.h"
#include "report/stock_json.h"

namespace baitwright {

namespace {

Json soak_json(const std::optional<PartSoak>& soak) {
    if (!soak) return {};
    return {{"water_to_pour_g", soak->pour.in(gram)},
            {"soak_minutes", soak->soak.in(minute)},
            {"stand_ready_minutes", soak->stand.in(minute)},
            {"wet_mass_g", soak->wet.in(gram)}};
}

Json parts_json(const MixAnswer& answer) {
    Json parts = Json::array();
    for (const PartAnswer& part : answer.parts)
        parts.push_back({{"name", part.name},
                         {"mass_g", part.mass.in(gram)},
                         {"volume_ml", part.volume.in(millilitre)},
                         {"share", double(part.share)},
                         {"free_offerings", part.free_offerings},
                         {"cost_minor", json_minor(part.cost)},
                         {"prepare", part.prepare == Preparation::soaked ? Json("soaked") : Json()},
                         {"soak", soak_json(part.soak)}});
    return parts;
}

Json additives_json(const MixAnswer& answer) {
    Json additives = Json::array();
    for (const AdditiveAnswer& additive : answer.additives)
        additives.push_back({{"name", additive.name},
                             {"mass_g", additive.mass.in(gram)},
                             {"volume_ml", additive.volume.in(millilitre)},
                             {"wetting_g", additive.wetting.in(gram)},
                             {"cost_minor", json_minor(additive.cost)},
                             {"of_label_max", additive.of_label_max ? Json(double(*additive.of_label_max)) : Json()}});
    return additives;
}

Json kitchen_json(const MixAnswer& answer) {
    Json parts = Json::array();
    for (const PartAnswer& part : answer.parts)
        parts.push_back({{"name", part.name}, {"mass_g", part.kitchen_mass.in(gram)}});
    return {{"parts", std::move(parts)}, {"water_g", answer.kitchen_water.in(gram)}};
}

Json portions_json(const MixAnswer& answer) {
    if (!answer.portions) return {};
    const PortionsAnswer& portions = *answer.portions;
    Json json{{"of", portions.called},
              {"count", portions.count},
              {"volume_ml", portions.each.in(millilitre)},
              {"mass_g", portions.mass_each.in(gram)},
              {"riddled_mass_g", portions.riddled_each ? Json(portions.riddled_each->in(gram)) : Json()},
              {"count_p05", nullptr},
              {"count_p95", nullptr}};
    if (answer.doubt && answer.doubt->portions) {
        json["count_p05"] = double(answer.doubt->portions->low);
        json["count_p95"] = double(answer.doubt->portions->high);
    }
    return json;
}

void add_doubt(const MixAnswer& answer, Json& json) {
    const auto grams = [&](Mass MixDoubt::*member) {
        return answer.doubt ? Json(((*answer.doubt).*member).in(gram)) : Json();
    };
    json["water_first_g"] = grams(&MixDoubt::first_pour);
    json["water_p05_g"] = answer.doubt ? Json(answer.doubt->water.low.in(gram)) : Json();
    json["water_p50_g"] = answer.doubt ? Json(answer.doubt->water.middle.in(gram)) : Json();
    json["water_p95_g"] = answer.doubt ? Json(answer.doubt->water.high.in(gram)) : Json();
}

void add_after_doubt(const MixAnswer& answer, Json& json) {
    json["wet_volume_p05_ml"] = answer.doubt ? Json(answer.doubt->wet_volume.low.in(millilitre)) : Json();
    json["wet_volume_p50_ml"] = answer.doubt ? Json(answer.doubt->wet_volume.middle.in(millilitre)) : Json();
    json["wet_volume_p95_ml"] = answer.doubt ? Json(answer.doubt->wet_volume.high.in(millilitre)) : Json();
    const bool named = answer.doubt && !answer.doubt->measure_first.empty();
    json["measure_first"] = named ? Json{{"name", answer.doubt->measure_first},
                                         {"property", answer.doubt->measure_first_what},
                                         {"share_of_variance", double(answer.doubt->measure_first_share)}}
                                  : Json();
}

}  // namespace

Json mix_json(const MixAnswer& answer) {
    Json json = json_record("mix", answer.warnings);
    json["recipe"] = answer.recipe;
    json["feel"] = answer.feel;
    json["state"] = name_of(answer.state);
    json["wetness"] = double(answer.wetness);
    json["wetness_in_tub"] = double(answer.wetness_in_tub);
    json["water_temp_c"] = answer.water_temperature.in_celsius();
    json["people"] = answer.people;
    json["dry_mass_g"] = answer.dry_mass.in(gram);
    json["dry_volume_ml"] = answer.dry_volume.in(millilitre);
    json["water_to_add_g"] = answer.water_to_add.in(gram);
    add_doubt(answer, json);
    json["water_already_in_g"] = answer.water_already_in.in(gram);
    json["dry_to_add_g"] = answer.dry_to_add.in(gram);
    json["rest_minutes"] = answer.rest.in(minute);
    json["wet_mass_g"] = answer.wet_mass.in(gram);
    json["wet_volume_ml"] = answer.wet_volume.in(millilitre);
    add_after_doubt(answer, json);
    json["wet_density_g_ml"] = (answer.wet_mass / answer.wet_volume).in(gram_per_millilitre);
    json["saturation"] = double(answer.saturation);
    json["absorption_g_g"] = double(answer.marks.absorption);
    json["slump_g_g"] = double(answer.marks.slump);
    json["free_offerings"] = answer.free_offerings;
    json["cost_minor"] = json_minor(answer.cost);
    json["currency"] = Json();
    for (const PartAnswer& part : answer.parts)
        if (part.cost) json["currency"] = part.cost->currency().code;
    for (const AdditiveAnswer& additive : answer.additives)
        if (additive.cost) json["currency"] = additive.cost->currency().code;
    json["parts"] = parts_json(answer);
    json["additives"] = additives_json(answer);
    json["kitchen"] = kitchen_json(answer);
    json["portions"] = portions_json(answer);
    json["targets"] = targets_json(answer);
    json["tubs"] = {{"count", answer.tubs.count}, {"wet_mass_g", answer.tubs.wet_each.in(gram)}};
    json["limited_by"] = answer.limited_by.empty() ? Json() : Json(answer.limited_by);
    json["booking"] = answer.booked ? receipt_json(*answer.booked) : Json();
    json["steps"] = mix_steps(answer);
    json["cautions"] = answer.cautions;
    add_learnt(answer.learnt, json);
    return json;
}

namespace {

std::string minor_text(const std::optional<Money>& money) {
    return money ? std::to_string(money->minor()) : "";
}
std::string code_text(const std::optional<Money>& money) {
    return money ? std::string(money->currency().code) : "";
}

}  // namespace

Rows mix_rows(const MixAnswer& answer) {
    Rows rows{
        {"what", "name", "mass_g", "volume_ml", "share", "free_offerings", "cost_minor", "currency", "kitchen_g"}};
    for (const PartAnswer& part : answer.parts)
        rows.push_back({part.prepare == Preparation::soaked ? "part, soaked" : "part", part.name,
                        number_text(part.mass.in(gram)), number_text(part.volume.in(millilitre)),
                        number_text(part.share), number_text(part.free_offerings), minor_text(part.cost),
                        code_text(part.cost), number_text(part.kitchen_mass.in(gram))});
    for (const AdditiveAnswer& additive : answer.additives)
        rows.push_back({"additive", additive.name, number_text(additive.mass.in(gram)),
                        number_text(additive.volume.in(millilitre)), "", "", minor_text(additive.cost),
                        code_text(additive.cost), ""});
    rows.push_back({"water", "water", number_text(answer.water_to_add.in(gram)),
                    number_text(answer.water_to_add.in(gram)), "", "", "", "",
                    number_text(answer.kitchen_water.in(gram))});
    add_target_rows(answer, rows);
    return rows;
}

}  // namespace baitwright
