#include "report/tub_report.h"

#include <fmt/format.h>

#include "bait/kitchen_rounding.h"
#include "quantities/units.h"
#include "report/display.h"
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

}  // namespace

Told tub_told(const TubAnswer& answer) {
    Told told;
    told.title(fmt::format("{}: {} dry with {} of water in", answer.recipe, shown_mass(answer.dry_mass),
                           shown_water(kitchen_water(answer.water_in))));
    const std::string settled = standing(answer.feel_settled, answer.wetness_settled);
    if (answer.settles_in >= 1.0 * minute) {
        told.line("Now", standing(answer.feel_now, answer.wetness_now) +
                             fmt::format("; it is still drinking, for about {} more", shown_time(answer.settles_in)));
        told.line("Settled", "it will be " + settled);
    } else {
        told.line("Settled", settled);
    }
    told.line("Do this", remedy(answer));
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
    return json;
}

}  // namespace baitwright
