#include "report/hot_day_report.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "answers/plan/last_in_tub.h"
#include "quantities/listed.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/session_moment.h"
#include "report/shown_units.h"
#include "report/stirred_in_last.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

std::string damp_water_text(Mass water) {
    return shown_water(jug_water(water));
}

/// What can be measured is whole; where the range is too narrow for that, to a tenth.
std::string spray_amount_text(Mass spray) {
    if (std::abs(spray.in(gram)-std::round(spray.in(gram))) < 0.05 || units_shown().system == UnitSystem::imperial)
        return shown_water(spray);
    return fmt::format("{:.1f} ml", spray.in(gram));
}

/// A range rounded outwards, so that what lies in it does so as told.
std::string loss_text(const Range<Mass>& loss) {
    const auto step_of = [](Mass water) {
        return (water < 20.0 * gram ? 1.0 : water < 2.0 * kilogram ? 5.0 : 10.0) * gram;
    };
    const Mass low = step_of(loss.low), high = step_of(loss.high);
    return shown_water(std::floor(loss.low / low) * low, std::ceil(loss.high / high) * high);
}

std::string kept_dry_text(const PlannedBatch& batch) {
    return shown_mass(scale_mass(kept_meal(batch)));
}

/// "stir in 45 g of casters at the very end": the share of what is wetted later; or nothing.
std::string last_text(const PlannedBatch& batch) {
    std::vector<std::string> last;
    const double share = batch.kept_dry / batch.dry;
    for (const LastPart& part : last_in_tub(batch))
        last.push_back(told_last(part.name, part.soaked ? Mass{} : share * part.mass));
    return last.empty() ? std::string() : stirred_in_last(last, {});
}

const PlannedBatch& batch_of(const SessionPlan& plan, const DampTub& tub) {
    return plan.batches[tub.batch];
}

std::string every_text(Time every) {
    const double minutes = std::round(every.in(minute));
    if (minutes == 60) return "every hour";
    return minutes == 30 ? std::string("every half hour") : fmt::format("every {:.0f} min", minutes);
}

std::string tub_air_text(const HotDay& hot) {
    const DryRequest& air = hot.air;
    return fmt::format("In air of {} and {} humidity, wind {:.2g} m/s, {}, over an open tub of {}",
                       shown_temperature(air.air), shown_whole_percent(double(air.humidity)),
                       air.wind.in(metre_per_second), air.in_sun ? "in the sun" : "in the shade",
                       hot.tub_assumed ? "40 x 30 cm (none was said)" : fmt::format("{:.0f} cm2", air.face.si() * 1e4));
}

/// An estimate, to five minutes.
Time to_five_minutes(Time moment) {
    return std::round(moment.in(minute) / 5) * 5.0 * minute;
}

/// "16 ml every half hour from 10:00, 7 times, 112 ml in all (70 to 155 ml)".
std::string spray_text(const SessionPlan& plan, const DampTub& tub) {
    if (tub.sprays == 1)
        return fmt::format("spray {} at {} ({})", spray_amount_text(tub.spray), session_moment(plan, tub.spray_first),
                           loss_text(tub.loss));
    return fmt::format("{} {} from {}, {} times, {} in all ({})", spray_amount_text(tub.spray),
                       every_text(tub.spray_every), session_moment(plan, tub.spray_first), tub.sprays,
                       shown_water(tub.sprayed()), loss_text(tub.loss));
}

/// " is drier than firm from about 10:50"
std::string drier_text(const SessionPlan& plan, const DampTub& tub) {
    return fmt::format(" is drier than {} from about {}", batch_of(plan, tub).feel,
                       session_moment(plan, to_five_minutes(*tub.leaves_feel)));
}

/// It dries out of its feel, and there is too little of it to spray.
bool needs_lid(const DampTub& tub) {
    return tub.leaves_feel && tub.sprays == 0;
}

std::string lid_text(const SessionPlan& plan, const DampTub& tub) {
    return batch_of(plan, tub).name + ": too little to spray; keep a lid on between put-ins. Left alone it" +
           drier_text(plan, tub) + ".";
}

std::string tub_text(const SessionPlan& plan, const DampTub& tub) {
    std::string text = batch_of(plan, tub).name + ": " + spray_text(plan, tub) + ".";
    if (tub.leaves_feel) text += " Left alone it" + drier_text(plan, tub) + ".";
    if (!tub.keeps_feel) text += " It dries out of it between the sprays, too: keep a lid on.";
    return text;
}

std::string later_text(const SessionPlan& plan, const DampTub& tub) {
    const LaterWetting& later = *tub.later;
    const PlannedBatch& batch = batch_of(plan, tub);
    const std::string last = last_text(batch);
    return fmt::format(
        "{}: keep {} of it dry. At {} stir {} into that, let it rest {}, riddle it, {}add about {} by "
        "feel{}: ready for {}.",
        batch.name, kept_dry_text(batch), session_moment(plan, later.at), damp_water_text(later.water_first),
        shown_time(later.rest), last.empty() ? "and " : "", damp_water_text(later.water_rest),
        last.empty() ? "" : ", and " + last, session_moment(plan, later.needed));
}

std::string how_to_keep(KeptCool kind) {
    switch (kind) {
        case KeptCool::live:
            return "in a cool bag out of the sun until they go in; what crawls needs air";
        case KeptCool::cooked:
            return "in a cool bag, covered; throw away what smells sour";
        case KeptCool::fresh_bread:
            return "in a cool bag, closed";
        case KeptCool::soaked:
            return "covered, in the shade";
        case KeptCool::pellets:
            break;
    }
    return "dry, in a closed tub in the shade";
}

std::vector<std::string> cool_names(const HotDay& hot, KeptCool kind) {
    std::vector<std::string> names;
    for (const CoolThing& thing : hot.cool)
        if (thing.kind == kind) names.push_back(thing.name);
    return names;
}

/// What is kept so, in the order of what suffers first.
std::vector<std::string> cool_texts(const HotDay& hot) {
    std::vector<std::string> texts;
    texts.reserve(kept_cool_names.size());
    for (std::size_t kind = 0; kind < kept_cool_names.size(); ++kind) {
        const auto names = cool_names(hot, static_cast<KeptCool>(kind));
        if (!names.empty()) texts.push_back(listed(names) + ": " + how_to_keep(static_cast<KeptCool>(kind)) + ".");
    }
    return texts;
}

bool sprays_anything(const HotDay& hot) {
    return std::any_of(hot.tubs.begin(), hot.tubs.end(), [](const DampTub& tub) { return tub.sprays > 0; });
}

CardRow damp_row(const std::string& when, const std::string& what, const std::string& amount) {
    CardRow row;
    row.tick = CardRow::Tick::box;
    row.when = when;
    row.what = what;
    row.amount = amount;
    return row;
}

void add_damp_rows(const SessionPlan& plan, const DampTub& tub, std::vector<CardRow>& rows) {
    const PlannedBatch& batch = batch_of(plan, tub);
    const std::string &name = batch.name, last = tub.later ? last_text(batch) : std::string();
    if (tub.later)
        rows.push_back(damp_row(session_moment(plan, tub.later->at),
                                fmt::format("wet the {} of {} kept dry: {}, rest {}, riddle, the rest by feel{}",
                                            kept_dry_text(batch), name, damp_water_text(tub.later->water_first),
                                            shown_time(tub.later->rest), last.empty() ? "" : "; " + last),
                                damp_water_text(tub.later->water_first + tub.later->water_rest)));
    CardRow row;
    if (needs_lid(tub)) {
        row.what = "keep a lid on " + name;
        rows.push_back(row);
    }
    if (tub.sprays == 0) return;
    row.when = session_moment(plan, tub.spray_first);
    row.what = fmt::format("spray {}, {}, {} times", name, every_text(tub.spray_every), tub.sprays);
    if (tub.sprays == 1) row.what = "spray " + name;
    row.amount = spray_amount_text(tub.spray);
    rows.push_back(std::move(row));
}

Json later_json(const LaterWetting& later) {
    return {{"minute", later.at.in(minute)},
            {"needed_minute", later.needed.in(minute)},
            {"dry_mass_g", later.dry.in(gram)},
            {"water_first_g", later.water_first.in(gram)},
            {"water_rest_g", later.water_rest.in(gram)},
            {"rest_minutes", later.rest.in(minute)},
            {"hands_on_minutes", later.hands_on.in(minute)}};
}

Json damp_tub_json(const SessionPlan& plan, const DampTub& tub) {
    const bool sprayed = tub.sprays > 0;
    return {{"of", batch_of(plan, tub).name},
            {"until_minute", tub.until.in(minute)},
            {"leaves_feel_minute", tub.leaves_feel ? Json(tub.leaves_feel->in(minute)) : Json()},
            {"spray_first_minute", sprayed ? Json(tub.spray_first.in(minute)) : Json()},
            {"spray_every_minutes", sprayed ? Json(tub.spray_every.in(minute)) : Json()},
            {"sprays", tub.sprays},
            {"keeps_feel", tub.keeps_feel},
            {"spray_g", sprayed ? Json(tub.spray.in(gram)) : Json()},
            {"sprayed_g", tub.sprayed().in(gram)},
            {"sprayed_low_g", tub.loss.low.in(gram)},
            {"sprayed_high_g", tub.loss.high.in(gram)},
            {"later", tub.later ? later_json(*tub.later) : Json()}};
}

}  // namespace

Told hot_day_told(const SessionPlan& plan) {
    Told told;
    if (!plan.hot_day) return told;
    const HotDay& hot = *plan.hot_day;
    told.heading("Keep it damp");
    told.gap();
    for (const DampTub& tub : hot.tubs) {
        if (tub.sprays > 0) told.line("Spray", sentence(tub_text(plan, tub)));
        if (needs_lid(tub)) told.line("Lid", sentence(lid_text(plan, tub)));
        if (tub.later) told.line("By halves", sentence(later_text(plan, tub)));
    }
    if (!sprays_anything(hot) && std::none_of(hot.tubs.begin(), hot.tubs.end(), needs_lid))
        told.line("Spray",
                  "Nothing, if the tubs stand covered until the start: none dries out of its feel before it is used.");
    for (const std::string& text : cool_texts(hot)) told.line("Keep cool", sentence(text));
    told.line("How sure", tub_air_text(hot) + ". " +
                              (sprays_anything(hot) ? "The range is from still air to moving; a lid between put-ins "
                                                      "saves most of it. Feel the mix and spray by that "
                                                    : "Feel the mix all the same ") +
                              "(common practice).");
    told.gap();
    return told;
}

CardSection damp_section(const SessionPlan& plan) {
    CardSection section;
    section.heading = "Keep it damp";
    section.side = CardSection::Side::water;
    if (!plan.hot_day) return section;
    for (const DampTub& tub : plan.hot_day->tubs) add_damp_rows(plan, tub, section.rows);
    for (const std::string& text : cool_texts(*plan.hot_day)) {
        CardRow row;
        row.what = text;
        section.rows.push_back(std::move(row));
    }
    return section;
}

Json hot_day_json(const SessionPlan& plan) {
    if (!plan.hot_day) return nullptr;
    const HotDay& hot = *plan.hot_day;
    Json json{{"air_temp_c", hot.air.air.in_celsius()},
              {"humidity", double(hot.air.humidity)},
              {"wind_m_s", hot.air.wind.in(metre_per_second)},
              {"sun", hot.air.in_sun},
              {"tub_cm2", hot.air.face.si() * 1e4},
              {"sprayed_g", hot.sprayed.in(gram)},
              {"tubs", Json::array()},
              {"keep_cool", Json::array()}};
    for (const DampTub& tub : hot.tubs) json["tubs"].push_back(damp_tub_json(plan, tub));
    for (const CoolThing& thing : hot.cool)
        json["keep_cool"].push_back({{"name", thing.name}, {"as", name_of(thing.kind)}});
    return json;
}

}  // namespace baitwright
