#include "report/soak_json.h"

#include "bait/kitchen_rounding.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

Json days_or_null(const std::optional<Time>& time) {
    return time ? Json(time->in(day)) : Json();
}

Json additives_json(const BatchAnswer& batch) {
    Json list = Json::array();
    for (const SteepedAdditive& additive : batch.additives)
        list.push_back({{"name", additive.name},
                        {"mass_g", additive.mass.in(gram)},
                        {"volume_ml", additive.volume.in(millilitre)},
                        {"strength_pct", additive.strength.in(percent)},
                        {"in_pellet_pct", additive.in_pellet.in(percent)},
                        {"of_label_max", additive.of_label_max ? Json(double(*additive.of_label_max)) : Json()}});
    return list;
}

/// What a batch has however its water came in. Keys that the other kind has follow as null.
Json batch_json(const BatchAnswer& batch) {
    return {{"pellet", batch.name},
            {"diameter_mm", batch.diameter.in(millimetre)},
            {"dry_mass_g", batch.dry.in(gram)},
            {"dry_volume_ml", batch.dry_volume.in(millilitre)},
            {"free_offerings", batch.grains.all},
            {"in_cup", batch.grains.in_cup},
            {"in_ball", batch.grains.in_ball},
            {"in_hand", batch.grains.in_hand},
            {"uptake_g", batch.inside.in(gram)},
            {"wet_mass_g", batch.wet().in(gram)},
            {"wet_volume_ml", batch.wet_volume.in(millilitre)},
            {"water_to_pour_g", batch.pour.in(gram)},
            {"additives", additives_json(batch)},
            {"water_activity", batch.water_activity ? Json(double(*batch.water_activity)) : Json()},
            {"keeps_cold_days", days_or_null(batch.keeps_cold)},
            {"keeps_frozen_days", days_or_null(batch.keeps_frozen)}};
}

Json soaked_json(const SoakedAnswer& soaked) {
    Json json = batch_json(soaked);
    json["soak_minutes"] = soaked.soak.middle.in(minute);
    json["soak_minutes_range"] = low_high(soaked.soak, minute);
    json["right_soak_minutes"] = soaked.right_soak ? Json(soaked.right_soak->middle.in(minute)) : Json();
    json["right_soak_minutes_range"] = soaked.right_soak ? low_high(*soaked.right_soak, minute) : Json();
    json["stand_ready_minutes"] = soaked.stand_ready.middle.in(minute);
    json["stand_ready_minutes_range"] = low_high(soaked.stand_ready, minute);
    json["stand_even_minutes"] = soaked.stand_even.middle.in(minute);
    json["kitchen"] = {{"soak_minutes", kitchen_soak_time(soaked.soak.middle).in(minute)},
                       {"stand_ready_minutes", kitchen_time(soaked.stand_ready.middle).in(minute)}};
    json["uptake_fraction"] = double(soaked.uptake);
    json["uptake_fraction_range"] = low_high(soaked.uptake_range, one);
    json["wet_mass_g_range"] = low_high(soaked.wet_range, gram);
    json["core_fraction"] = double(soaked.ready.core);
    json["surface_fraction"] = double(soaked.ready.surface);
    json["curve"] = Json::array();
    for (const SoakPoint& point : soaked.curve)
        json["curve"].push_back({{"minutes", point.at.in(minute)},
                                 {"mean", double(point.mean)},
                                 {"core", double(point.core)},
                                 {"surface", double(point.surface)}});
    return json;
}

void put_stroke(Json& json, const StrokeAnswer& stroke) {
    json["strokes"] = stroke.strokes;
    json["pressure_kpa"] = stroke.pressure.in(kilopascal);
    json["fill_fraction"] = double(stroke.fill);
    json["density_g_ml"] = stroke.density.in(gram_per_millilitre);
    json["sinks"] = stroke.buoyancy != Buoyancy::floats;
    json["share_of_bags_sinking"] = double(stroke.sinking);
}

Json pumped_json(const PumpedAnswer& pumped) {
    const auto number_or_null = [](const std::optional<int>& number) { return number ? Json(*number) : Json(); };
    Json json = batch_json(pumped);
    put_stroke(json, pumped.at);
    json["fewest_strokes"] = number_or_null(pumped.fewest);
    json["fewest_strokes_nearly_all"] = number_or_null(pumped.fewest_sure);
    json["lots"] = pumped.lots;
    json["free_volume_ml"] = pumped.free_volume.in(millilitre);
    json["by_stroke"] = Json::array();
    for (const StrokeAnswer& stroke : pumped.by_stroke) {
        Json row;
        put_stroke(row, stroke);
        json["by_stroke"].push_back(std::move(row));
    }
    return json;
}

const char* word_of(SoakTask::Kind kind) {
    switch (kind) {
        case SoakTask::Kind::pour_on:
            return "pour";
        case SoakTask::Kind::drain:
            return "drain";
        case SoakTask::Kind::pump:
            break;
    }
    return "pump";
}

void put_soak(Json& json, const SoakAnswer& answer) {
    json["water_temp_c"] = answer.water.in_celsius();
    json["method"] = answer.method == SoakMethod::covered ? "covered" : "measured";
    json["pellets"] = Json::array();
    for (const SoakedAnswer& soaked : answer.soaked) json["pellets"].push_back(soaked_json(soaked));
    for (const PumpedAnswer& pumped : answer.pumped) json["pellets"].push_back(pumped_json(pumped));
    json["timetable"] = Json::array();
    for (const SoakTask& task : answer.timetable)
        json["timetable"].push_back({{"minutes_before_ready", task.before_ready.in(minute)},
                                     {"task", word_of(task.kind)},
                                     {"pellet", task.name},
                                     {"water_g", task.pour.in(gram)}});
    json["cautions"] = answer.cautions;
}

}  // namespace

Json soak_json(const SoakAnswer& answer) {
    Json json = json_record("soak", answer.warnings);
    put_soak(json, answer);
    return json;
}

Json soak_comparison_json(const std::vector<SoakAnswer>& answers) {
    Json json = json_record("soak", answers.front().warnings);
    json["temperatures"] = Json::array();
    for (const SoakAnswer& answer : answers) {
        Json one_water;
        put_soak(one_water, answer);
        json["temperatures"].push_back(std::move(one_water));
    }
    return json;
}

Rows soak_rows(const std::vector<SoakAnswer>& answers) {
    Rows rows{{"pellet", "water_temp_c", "dry_mass_g", "dry_volume_ml", "water_to_pour_g", "soak_minutes",
               "stand_ready_minutes", "stand_even_minutes", "uptake_fraction", "strokes", "wet_mass_g", "wet_volume_ml",
               "free_offerings"}};
    const auto row = [&](const SoakAnswer& answer, const BatchAnswer& batch, std::vector<std::string> how) {
        std::vector<std::string> cells{batch.name, number_text(answer.water.in_celsius()),
                                       number_text(batch.dry.in(gram)), number_text(batch.dry_volume.in(millilitre)),
                                       number_text(batch.pour.in(gram))};
        cells.insert(cells.end(), how.begin(), how.end());
        cells.insert(cells.end(), {number_text(batch.wet().in(gram)), number_text(batch.wet_volume.in(millilitre)),
                                   number_text(batch.grains.all)});
        rows.push_back(std::move(cells));
    };
    for (const SoakAnswer& answer : answers) {
        for (const SoakedAnswer& soaked : answer.soaked)
            row(answer, soaked,
                {number_text(soaked.soak.middle.in(minute)), number_text(soaked.stand_ready.middle.in(minute)),
                 number_text(soaked.stand_even.middle.in(minute)), number_text(soaked.uptake), ""});
        for (const PumpedAnswer& pumped : answer.pumped)
            row(answer, pumped, {"", "", "", "", std::to_string(pumped.at.strokes)});
    }
    return rows;
}

}  // namespace baitwright
