#include "report/replies.h"

#include <fmt/format.h>

#include "quantities/worded.h"
#include "report/display.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

std::string shown_range(const LowHigh<Mass>& range) {
    return shown_water(jug_water(range.low), jug_water(range.high));
}

std::string leaves_line(const DryAnswer& answer) {
    const auto& [soonest, latest] = answer.until_it_leaves;
    if (!latest) return fmt::format("It is drier than {} after {} at the soonest.", answer.feel, shown_time(*soonest));
    return fmt::format("It is drier than {} after {} to {}.", answer.feel, shown_time(*soonest), shown_time(*latest));
}

/// Of an hour or of all the time: less is not told.
bool is_nothing(const LowHigh<Mass>& range) {
    return range.high < 0.5 * gram;
}

std::string alone_line(const DryAnswer& answer) {
    const std::string lost = shown_range(answer.lost);
    if (is_nothing(answer.lost)) return fmt::format("Left alone it stays {}.", answer.feel);
    if (answer.becomes == answer.feel) return fmt::format("Left alone it loses {} and stays {}.", lost, answer.feel);
    return fmt::format("Left alone it loses {} and could end up {}.", lost, answer.becomes);
}

Told dry_told(const DryAnswer& answer) {
    Told told;
    told.title(fmt::format("{}, {}: {} dry, wetted, {} {} for {}", answer.recipe, answer.feel,
                           shown_mass(scale_mass(answer.dry_mass)), answer.covered ? "under a lid" : "in an open tub",
                           answer.in_sun ? "in the sun" : "in the shade", shown_time(answer.hours)));
    told.line("Loses", is_nothing(answer.loss_per_hour)
                           ? "Next to no water in this air."
                           : shown_range(answer.loss_per_hour) +
                                 " of water an hour: less in still air, more with the wind on it.");
    if (answer.until_it_leaves.low) told.line("Leaves", leaves_line(answer));  // else a warning tells of it
    if (is_nothing(answer.to_spray))
        told.line("Spray", "It needs none back. " + alone_line(answer));
    else
        told.line("Spray", fmt::format("Give it back {} over that time, little and often, and turn it over. {}",
                                       shown_range(answer.to_spray), alone_line(answer)));
    told.line("How sure",
              worded("Weigh the tub: what it has lost is what it needs back (baitwright water works from the weight). ",
                     "Weigh the tub: what it has lost is what it needs back (Tub works from the weight). ") +
                  "This is an estimate; shade, a lid and a damp cloth count for more than any of it.");
    told.mind(answer.warnings);
    return told;
}

Json dry_json(const DryAnswer& answer) {
    const auto minutes = [](const std::optional<Time>& time) { return time ? Json(time->in(minute)) : Json(); };
    Json json = json_record("dry", answer.warnings);
    json["recipe"] = answer.recipe;
    json["feel"] = answer.feel;
    json["wetness"] = double(answer.wetness);
    json["dry_mass_g"] = answer.dry_mass.in(gram);
    json["hours"] = answer.hours.in(hour);
    json["loss_g_h"] = {{"low", answer.loss_per_hour.low.in(gram)}, {"high", answer.loss_per_hour.high.in(gram)}};
    json["minutes_to_leave_feel"] = {{"low", minutes(answer.until_it_leaves.low)},
                                     {"high", minutes(answer.until_it_leaves.high)}};
    json["water_to_spray_g"] = {{"low", answer.to_spray.low.in(gram)}, {"high", answer.to_spray.high.in(gram)}};
    json["water_lost_g"] = {{"low", answer.lost.low.in(gram)}, {"high", answer.lost.high.in(gram)}};
    json["wetness_after"] = {{"low", double(answer.wetness_after_high)}, {"high", double(answer.wetness_after_low)}};
    return json;
}

}  // namespace

Reply dry_reply(DryAnswer answer) {
    return reply_of(std::move(answer), dry_told, dry_json);
}

}  // namespace baitwright
