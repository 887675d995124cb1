#include "report/tub_report.h"

#include <fmt/format.h>

#include "quantities/units.h"
#include "report/display.h"
#include "report/learnt_json.h"
#include "report/remedy_text.h"

namespace baitwright {

namespace {

std::string standing(const std::string& feel, Ratio wetness) {
    return fmt::format("{} (wetness {:.1f})", feel, double(wetness));
}

std::string remedy(const TubAnswer& answer) {
    if (!(answer.wetness_settled > 0) && !answer.all_parts_take_water)
        return "Nothing: water does not change this mix.";
    return remedy_text({answer.wanted_feel, answer.water_to_add, answer.dry_to_add, answer.all_parts_take_water});
}

std::string room_text(const TubRoom& room) {
    std::string text;
    for (std::size_t i = 0; i < room.volumes.size(); ++i) {
        if (!room.volumes[i]) continue;
        if (!text.empty()) text += ", ";
        text += fmt::format("{} {}", shown_volume(*room.volumes[i]), mix_state_names[i]);
    }
    return text;
}

/// "cup of 250 ml", "ball of 55 mm".
std::string size_text(const TubMakes& makes) {
    return makes.diameter > Length{} ? fmt::format("{:.0f} mm", makes.diameter.in(millimetre))
                                     : shown_volume(makes.each);
}

std::string makes_text(const TubMakes& makes) {
    const std::string mass = shown_mass(scale_mass(makes.mass_each));
    if (makes.count == 0)
        return fmt::format("Not one {} of {}, which would weigh about {}", makes.called, size_text(makes), mass);
    const std::string ones =
        fmt::format("{} {}{} of {}", makes.count, makes.called, makes.count == 1 ? "" : "s", size_text(makes));
    const std::string range =
        makes.low == makes.high ? "" : fmt::format(" (9 times in 10 from {} to {})", makes.low, makes.high);
    return fmt::format("{}{}, about {} each", ones, range, mass);
}

void tell_holds(Told& told, const TubAnswer& answer) {
    const bool is_right = !(answer.water_to_add > Mass{}) && !(answer.dry_to_add > Mass{});
    told.line("Holds", fmt::format("About {}{}.", room_text(answer.put_right), is_right ? "" : ", once it is right"));
    if (!is_right) told.line("", fmt::format("As it stands {}.", room_text(answer.as_it_stands)));
    for (std::size_t i = 0; i < answer.makes.size(); ++i)
        told.line(i == 0 ? "Makes" : "", makes_text(answer.makes[i]) + ".");
}

Json room_json(const TubRoom& room) {
    Json json = Json::object();
    for (std::size_t i = 0; i < room.volumes.size(); ++i)
        json[mix_state_names[i]] = room.volumes[i] ? Json(room.volumes[i]->in(millilitre)) : Json();
    return json;
}

Json makes_json(const std::vector<TubMakes>& all) {
    Json json = Json::array();
    for (const TubMakes& makes : all)
        json.push_back({{"form", makes.called},
                        {"size", size_text(makes)},
                        {"volume_ml", makes.each.in(millilitre)},
                        {"count", makes.count},
                        {"low", makes.low},
                        {"high", makes.high},
                        {"mass_each_g", makes.mass_each.in(gram)}});
    return json;
}

}  // namespace

Told tub_told(const TubAnswer& answer) {
    Told told;
    told.title(fmt::format("{}: {} dry with {} of water in", answer.recipe, shown_mass(answer.dry_mass),
                           shown_water(jug_water(answer.water_in))));
    const std::string settled = standing(answer.feel_settled, answer.wetness_settled);
    if (answer.settles_in >= 1.0 * minute) {
        told.line("Now", standing(answer.feel_now, answer.wetness_now) +
                             fmt::format("; it is still drinking, for about {} more", shown_time(answer.settles_in)));
        told.line("Settled", "it will be " + settled);
    } else {
        told.line("Settled", settled);
    }
    told.line("Do this", remedy(answer));
    tell_holds(told, answer);
    told.line(
        "How sure",
        "An estimate from the mix's absorption and slump; your hand decides. Judge it once it has settled, not before.");
    told.mind(answer.warnings);
    return told;
}

Json tub_json(const TubAnswer& answer) {
    Json json = json_record("water", answer.warnings);
    json["recipe"] = answer.recipe;
    json["feel"] = answer.wanted_feel;
    json["wetness"] = double(answer.wanted_wetness);
    json["dry_mass_g"] = answer.dry_mass.in(gram);
    json["water_in_g"] = answer.water_in.in(gram);
    json["wetness_now"] = double(answer.wetness_now);
    json["feel_now"] = answer.feel_now;
    json["wetness_settled"] = double(answer.wetness_settled);
    json["feel_settled"] = answer.feel_settled;
    json["settles_in_minutes"] = answer.settles_in.in(minute);
    json["water_to_add_g"] = answer.water_to_add.in(gram);
    json["dry_to_add_g"] = answer.dry_to_add.in(gram);
    json["holds_ml"] = room_json(answer.put_right);
    json["holds_as_it_stands_ml"] = room_json(answer.as_it_stands);
    json["wet_mass_g"] = answer.put_right.wet_mass.in(gram);
    json["makes"] = makes_json(answer.makes);
    add_learnt(answer.learnt, json);
    return json;
}

}  // namespace baitwright
