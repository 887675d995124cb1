#include <array>
#include "quantities/quantity_text.h"

#include "quantities/units.h"
#include "report/drop_report.h"
#include "report/learnt_json.h"

namespace baitwright {

namespace {

const char* word_of(Breaks breaks) {
    switch (breaks) {
        case Breaks::surface:
            return "surface";
        case Breaks::midwater:
            return "midwater";
        case Breaks::bottom:
            break;
    }
    return "bottom";
}

const char* word_of(TowProfile profile) {
    switch (profile) {
        case TowProfile::lake:
            return "still";
        case TowProfile::river:
            return "river";
        default:
            return "straight";
    }
}

template <class Q, class Unit>
Json points(const Points<Q>& points, Unit unit) {
    return {{"p10", points.p10.in(unit)}, {"p50", points.p50.in(unit)}, {"p90", points.p90.in(unit)}};
}

Json carpet(const Carpet& carpet) {
    return {{"p50", carpet.half.in(metre)}, {"p90", carpet.most.in(metre)}};
}

Json classes_json(const DropAnswer& answer) {
    Json list = Json::array();
    for (const DropClass& c : answer.classes)
        list.push_back({{"name", c.name},
                        {"size_mm", c.size.in(millimetre)},
                        {"settling_m_s", c.settling.in(metre_per_second)},
                        {"share", double(c.share)},
                        {"landed_s", c.sinks ? Json(c.lands.in(second)) : Json()},
                        {"drift_m", c.sinks ? Json(c.drift.in(metre)) : Json()},
                        {"radius_m", c.sinks ? Json(c.radius.in(metre)) : Json()},
                        {"in_lump", c.in_lump}});
    return list;
}

Json parts_json(const DropAnswer& answer) {
    Json list = Json::array();
    for (const DropPart& part : answer.parts)
        list.push_back({{"name", part.name},
                        {"share", double(part.share)},
                        {"landed_p50_s", part.landed ? Json(part.landed->in(second)) : Json()},
                        {"carpet_width_p90_m", part.landed ? Json(part.width.in(metre)) : Json()},
                        {"drift_p50_m", part.landed ? Json(part.drift.in(metre)) : Json()},
                        {"fines", double(part.fines)},
                        {"floats_s", part.floats ? Json(part.floats->in(second)) : Json()}});
    return list;
}

/// What the water does with it; all null where it floats.
void put_fate(const DropAnswer& answer, Json& json) {
    const std::array<const char*, 21> keys{"breaks",
                                           "breaks_depth_m",
                                           "breaks_depth_m_range",
                                           "breaks_s",
                                           "lasts_s",
                                           "lands_as_one",
                                           "half_worn_m",
                                           "landed_s",
                                           "landed_p50_s_range",
                                           "landed_p90_s_range",
                                           "hanging",
                                           "hanging_min10_range",
                                           "carpet_length_m",
                                           "carpet_length_p90_m_range",
                                           "carpet_width_m",
                                           "carpet_width_p90_m_range",
                                           "drift_m",
                                           "drift_p50_m_range",
                                           "feed_up_tow_m",
                                           "start_beyond_m",
                                           "in_hand"};
    for (const char* key : keys) json[key] = nullptr;
    if (answer.classes.empty()) return;
    json["breaks"] = word_of(answer.breaks);
    json["breaks_depth_m"] = answer.breaks_depth.in(metre);
    json["breaks_depth_m_range"] = low_high(answer.breaks_depth_range, metre);
    json["breaks_s"] = answer.breaks_at.in(second);
    json["lasts_s"] = answer.lasts.in(second);
    json["lands_as_one"] = answer.lands_as_one;
    if (answer.half_worn) json["half_worn_m"] = answer.half_worn->in(metre);
    json["landed_s"] = points(answer.landed, second);
    json["landed_p50_s_range"] = low_high(answer.landed_half_range, second);
    json["landed_p90_s_range"] = low_high(answer.landed_most_range, second);
    json["hanging"] = {{"min1", answer.hanging[0]},
                       {"min5", answer.hanging[1]},
                       {"min10", answer.hanging[2]},
                       {"min30", answer.hanging[3]}};
    json["hanging_min10_range"] = low_high(answer.hanging_10_range, one);
    json["carpet_length_m"] = carpet(answer.length);
    json["carpet_length_p90_m_range"] = low_high(answer.length_range, metre);
    json["carpet_width_m"] = carpet(answer.width);
    json["carpet_width_p90_m_range"] = low_high(answer.width_range, metre);
    json["drift_m"] = points(answer.drift, metre);
    json["drift_p50_m_range"] = low_high(answer.drift_range, metre);
    json["feed_up_tow_m"] = answer.feed_up_tow.in(metre);
    json["start_beyond_m"] = answer.start_beyond.in(metre);
    json["in_hand"] = answer.in_hand;
}

void put_drop(const DropAnswer& answer, Json& json) {
    json["recipe"] = answer.recipe;
    json["feel"] = answer.feel;
    json["wetness"] = double(answer.wetness);
    json["form"] = answer.form;
    json["state"] = std::string(name_of(answer.state));
    json["depth_m"] = answer.depth.in(metre);
    json["volume_ml"] = answer.volume.in(millilitre);
    json["wet_mass_g"] = answer.wet_mass.in(gram);
    json["dry_mass_g"] = answer.dry_mass.in(gram);
    json["free_offerings"] = answer.free_offerings;
    put_fate(answer, json);
    json["floats_first_s"] = answer.raft ? Json(answer.raft->in(second)) : Json();
    json["tow_profile"] = word_of(answer.water);
    json["parts"] = parts_json(answer);
    json["classes"] = classes_json(answer);
    json["hook"] = answer.hook ? Json{{"name", answer.hook->name},
                                      {"lands_s", answer.hook->lands.in(second)},
                                      {"with_the_feed", answer.hook->with_the_feed}}
                               : Json();
    json["own"] = answer.own;
    json["cautions"] = answer.cautions;
    add_learnt(answer.learnt, json);
}

}  // namespace

Json drop_json(const DropAnswer& answer) {
    Json json = json_record("drop", answer.warnings);
    put_drop(answer, json);
    return json;
}

Json drop_comparison_json(const std::vector<DropAnswer>& answers) {
    Json json = json_record("drop", {});
    json["drops"] = Json::array();
    for (const DropAnswer& answer : answers) {
        Json record;
        put_drop(answer, record);
        json["drops"].push_back(std::move(record));
    }
    return json;
}

Rows drop_rows(const std::vector<DropAnswer>& answers) {
    Rows rows{{"feel", "form", "name", "size_mm", "settling_m_s", "share", "landed_s", "drift_m", "radius_m"}};
    for (const DropAnswer& answer : answers)
        for (const DropClass& c : answer.classes)
            rows.push_back({answer.feel, answer.form, c.name, number_text(c.size.in(millimetre)),
                            number_text(c.settling.in(metre_per_second)), number_text(c.share),
                            c.sinks ? number_text(c.lands.in(second)) : "",
                            c.sinks ? number_text(c.drift.in(metre)) : "",
                            c.sinks ? number_text(c.radius.in(metre)) : ""});
    return rows;
}

}  // namespace baitwright
