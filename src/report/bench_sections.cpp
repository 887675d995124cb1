#include <fmt/format.h>

#include <algorithm>

#include "answers/mix/mix_doubt.h"
#include "answers/plan/last_in_tub.h"
#include "bait/caution.h"
#include "quantities/units.h"
#include "report/breach_text.h"
#include "report/display.h"
#include "report/hand_measure.h"
#include "report/kept_text.h"
#include "report/level_cup.h"
#include "report/pump_words.h"
#include "report/session_sheet.h"
#include "report/sheet_sections.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

constexpr Volume least_told = 0.1 * imperial_pint;  // less is no measure of a pint pot
CardRow note_row(const std::string& text) {
    CardRow row;
    row.what = text;
    return row;
}

bool is_dose(const PlannedBatch& batch, std::size_t part) {
    return std::find(batch.doses.begin(), batch.doses.end(), part) != batch.doses.end();
}

CardRow mass_row(const std::string& what, Mass mass, Volume volume) {
    CardRow row;
    row.what = what;
    row.amount = shown_weighed(mass);
    if (volume >= least_told) row.also = shown_loose(volume);
    return row;
}

CardRow dose_row(const PlannedTotal& part) {
    CardRow row;
    row.what = part.name + hand_measure_behind(hand_amount(part));
    row.amount = part.liquid ? shown_dose(part.volume) : shown_dose(part.mass);
    return row;
}

std::string soaked_word(const PlannedTotal& part) {
    if (!(part.soaked > Mass{})) return {};
    return part.soaked >= 0.999 * part.mass ? " (weighed dry, then soaked)"
                                            : " (" + shown_mass(scale_mass(part.soaked)) + " of it soaked)";
}

std::string part_words(const PlannedTotal& part) {
    return part.name + hand_measure_behind(hand_amount(part)) + soaked_word(part);
}

CardRow water_row(const std::string& what, Mass water) {
    CardRow row;
    row.what = what;
    row.amount = shown_water(jug_water(water));
    if (water / (1.0 * gram_per_millilitre) >= least_told) row.also = other_water(water);
    return row;
}

/// A first pour, a rest, and small steps to the feel.
void add_water(const PlannedBatch& batch, std::vector<CardRow>& rows) {
    if (!(batch.water_first + batch.water_rest > 0.5 * gram)) return;
    const std::string mark =
        fmt::format("until {}; never past {} in all", batch.feel, shown_water(jug_water(batch.water_range.high)));
    if (!(batch.water_rest > 0.5 * gram)) {
        rows.push_back(water_row("water, a little at a time, " + mark, batch.water_first));
        return;
    }
    rows.push_back(water_row("water at first; rest " + shown_time(batch.rest) + ", riddle", batch.water_first));
    const Mass step = creeping_step((batch.water_first + batch.water_rest) / batch.buckets);
    rows.push_back(water_row(
        fmt::format("then {} at a time{}, {}", shown_water(step), batch.buckets > 1 ? " to a bucket" : "", mark),
        batch.water_rest));
}

CardSection section_of(std::string heading, CardSection::Look look = CardSection::Look::lines) {
    CardSection section;
    section.heading = std::move(heading);
    section.look = look;
    return section;
}

std::string heading_of(const PlannedBatch& batch) {
    std::string heading = batch.name;
    if (!batch.feel.empty() && heading.find("(" + batch.feel + ")") == std::string::npos) heading += ", " + batch.feel;
    if (batch.buckets > 1) heading += fmt::format(": {} buckets alike", batch.buckets);
    return heading;
}

CardSection batch_section(const PlannedBatch& batch) {
    CardSection section = section_of(heading_of(batch));
    const std::vector<LastPart> last = last_in_tub(batch);
    const auto goes_in_last = [&](const PlannedTotal& part) {
        return std::any_of(last.begin(), last.end(),
                           [&](const LastPart& one) { return one.name == part.name && !one.soaked; });
    };
    for (std::size_t i = 0; i < batch.parts.size(); ++i) {
        const PlannedTotal& part = batch.parts[i];
        section.rows.push_back(is_dose(batch, i) ? dose_row(part) : mass_row(part_words(part), part.mass, part.volume));
        if (goes_in_last(part)) section.rows.back().what += " (goes in last)";
    }
    add_water(batch, section.rows);
    for (const LetDown& wetter : batch.let_downs)
        section.rows.push_back(water_row(
            fmt::format("more, for {} of it, let down to {}", shown_mass(scale_mass(wetter.take)), wetter.feel),
            wetter.water));
    if (batch.kept_dry > Mass{})
        section.rows.push_back(note_row("in two goes: " + shown_mass(scale_mass(kept_meal(batch))) +
                                        " stays dry, with its share of the water: see Keep it damp"));
    for (const KeptUse& use : batch.kept)
        section.rows.push_back(note_row("of it " + kept_amount(use) + ": " + kept_handling(use)));
    return section;
}

bool goes_in_alone(const PlannedBatch& batch) {
    return batch.feel.empty() && batch.parts.size() == 1 && batch.kept.empty();
}

std::string soak_words(const PlannedSoak& soak) {
    const std::string what = soak.name + ", " + shown_weighed(soak.dry) + ": ";
    if (soak.strokes > 0) return what + "under water, " + pump_words(soak);
    return what + fmt::format("soak {}, drain, stand {}", shown_soak_time(soak.soak), shown_soak_time(soak.stand));
}

}  // namespace

std::vector<CardSection> weigh_sections(const SessionPlan& plan) {
    std::vector<CardSection> sections;
    CardSection as_it_is = section_of("As it is, and for the hook");
    for (const PlannedBatch& batch : plan.batches) {
        if (!goes_in_alone(batch)) {
            sections.push_back(batch_section(batch));
            continue;
        }
        const PlannedTotal& part = batch.parts.front();
        as_it_is.rows.push_back(mass_row(part_words(part), part.mass, part.volume));
    }
    for (const HookbaitNeed& hook : plan.hookbaits)
        as_it_is.rows.push_back(mass_row(fmt::format("{} for the hook, about {}", hook.name, shown_count(hook.count)),
                                         hook.mass, hook.volume));
    sections.push_back(std::move(as_it_is));
    return sections;
}

CardSection soak_section(const SessionPlan& plan) {
    CardSection section = section_of("Soak and pump: water to pour on");
    for (const PlannedSoak& soak : plan.soaks) section.rows.push_back(water_row(soak_words(soak), soak.pour));
    return section;
}

CardSection total_section(const SessionPlan& plan) {
    CardSection section = section_of("In all", CardSection::Look::two_columns);
    for (const PlannedTotal& total : plan.totals)
        section.rows.push_back(total.liquid ? dose_row(total) : mass_row(total.name, total.mass, total.volume));
    section.in_short = {water_row("water to carry", plan.water_to_carry),
                        mass_row(fmt::format("ready, in {} {}", plan.containers, plan.containers == 1 ? "tub" : "tubs"),
                                 plan.wet_mass, plan.wet_volume)};
    section.rows.insert(section.rows.end(), section.in_short.begin(), section.in_short.end());
    section.gives = CardSection::Gives::doubled_weights;
    section.left_out = plan.totals.size();
    return section;
}

CardSection mind_section(const SessionPlan& plan) {
    CardSection section = section_of("Mind", CardSection::Look::notes);
    section.side = CardSection::Side::water;
    for (const PlanBreach& breach : plan.breaches)
        section.rows.push_back(note_row("BREAKS A RULE: " + breach.rule + "; planned " + planned_against(breach)));
    for (const std::string& rule : plan.venue_notes) section.rows.push_back(note_row(rule));
    for (const Warning& warning : plan.warnings) section.rows.push_back(note_row(sentence(warning.message)));
    section.in_short = section.rows;
    if (feeds_level_cups(plan))
        section.rows.push_back(note_row(sentence(std::string("a level cup is ") + level_cup_words)));
    for (const std::string& caution : plan.cautions) section.rows.push_back(note_row(caution));
    if (plan.cautions.empty()) return section;
    section.in_short.push_back(note_row(brief_cautions(plan.cautions) + " In full: baitwright plan."));
    section.gives = CardSection::Gives::cautions_in_full;
    section.left_out = section.rows.size() + 1 - section.in_short.size();
    return section;
}

}  // namespace baitwright
