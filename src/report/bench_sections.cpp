#include <fmt/format.h>

#include <algorithm>

#include "bait/kitchen_rounding.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/session_sheet.h"
#include "report/sheet_sections.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

constexpr Volume least_told = 0.1 * imperial_pint;  // less is no measure of a pint pot
constexpr const char* in_the_plan = "baitwright plan has them";

bool is_dose(const PlannedBatch& batch, std::size_t part) {
    return std::find(batch.doses.begin(), batch.doses.end(), part) != batch.doses.end();
}

CardRow mass_row(const std::string& what, Mass mass, Volume volume) {
    CardRow row;
    row.what = what;
    row.amount = shown_weighed(mass);
    if (volume >= least_told) row.also = shown_pints(volume);
    return row;
}

CardRow dose_row(const PlannedTotal& part) {
    CardRow row;
    row.what = part.name;
    row.amount = part.liquid ? fmt::format("{:g} ml", kitchen_additive(part.volume).in(millilitre))
                             : fmt::format("{:g} g", kitchen_additive(part.mass).in(gram));
    return row;
}

std::string soaked_word(const PlannedTotal& part) {
    if (!(part.soaked > Mass{})) return {};
    return part.soaked >= 0.999 * part.mass ? " (weighed dry, then soaked)"
                                            : " (" + shown_mass(kitchen_mass(part.soaked)) + " of it soaked)";
}

CardRow water_row(const std::string& what, Mass water) {
    CardRow row;
    row.what = what;
    row.amount = shown_water(kitchen_water(water));
    const Volume volume = water / (1.0 * gram_per_millilitre);
    if (volume >= least_told) row.also = shown_pints(volume);
    return row;
}

/// A first pour, a rest, and small steps to the feel.
void add_water(const PlannedBatch& batch, std::vector<CardRow>& rows) {
    if (!(batch.water > 0.5 * gram)) return;
    if (!(batch.water_rest > 0.5 * gram)) {
        rows.push_back(water_row("water", batch.water));
        return;
    }
    rows.push_back(water_row("water at first; rest " + shown_time(batch.rest) + ", riddle", batch.water_first));
    const Mass step = std::max(kitchen_water(0.05 * batch.water / batch.containers), 5.0 * gram);
    rows.push_back(water_row(fmt::format("then {} at a time{}, until {}; never past {} in all", shown_water(step),
                                         batch.containers > 1 ? " to a bucket" : "", batch.feel,
                                         shown_water(kitchen_water(batch.water_range.high))),
                             batch.water_rest));
}

/// A section that gives way by its rank where the sheet is full; `plan` has what it leaves out.
CardSection section_of(std::string heading, int spare_rank, CardSection::Look look = CardSection::Look::lines) {
    CardSection section;
    section.heading = std::move(heading);
    section.look = look;
    section.spare_rank = spare_rank;
    section.where_else = in_the_plan;
    return section;
}

std::string heading_of(const PlannedBatch& batch) {
    std::string heading = batch.name;
    if (!batch.feel.empty() && heading.find("(" + batch.feel + ")") == std::string::npos) heading += ", " + batch.feel;
    if (batch.containers > 1) heading += fmt::format(": {} buckets alike", batch.containers);
    return heading;
}

CardSection batch_section(const PlannedBatch& batch) {
    CardSection section = section_of(heading_of(batch), 1);
    for (std::size_t i = 0; i < batch.parts.size(); ++i) {
        const PlannedTotal& part = batch.parts[i];
        section.rows.push_back(is_dose(batch, i) ? dose_row(part)
                                                 : mass_row(part.name + soaked_word(part), part.mass, part.volume));
    }
    add_water(batch, section.rows);
    return section;
}

bool goes_in_alone(const PlannedBatch& batch) {
    return batch.feel.empty() && batch.parts.size() == 1;
}

std::string soak_words(const PlannedSoak& soak) {
    const std::string what = soak.name + ", " + shown_weighed(soak.dry) + ": ";
    if (soak.strokes > 0)
        return what + fmt::format("pump {} {} under water", soak.strokes, soak.strokes == 1 ? "stroke" : "strokes");
    return what + fmt::format("soak {}, drain, stand {}", shown_soak_time(soak.soak), shown_soak_time(soak.stand));
}

}  // namespace

std::vector<CardSection> weigh_sections(const SessionPlan& plan) {
    std::vector<CardSection> sections;
    CardSection as_it_is = section_of("As it is, and for the hook", 1);
    for (const PlannedBatch& batch : plan.batches) {
        if (!goes_in_alone(batch)) {
            sections.push_back(batch_section(batch));
            continue;
        }
        const PlannedTotal& part = batch.parts.front();
        as_it_is.rows.push_back(mass_row(part.name + soaked_word(part), part.mass, part.volume));
    }
    for (const HookbaitNeed& hook : plan.hookbaits)
        as_it_is.rows.push_back(mass_row(fmt::format("{} for the hook, about {}", hook.name, shown_count(hook.count)),
                                         hook.mass, hook.volume));
    sections.push_back(std::move(as_it_is));
    return sections;
}

CardSection soak_section(const SessionPlan& plan) {
    CardSection section = section_of("Soak and pump: water to pour on", 1);
    for (const PlannedSoak& soak : plan.soaks) section.rows.push_back(water_row(soak_words(soak), soak.pour));
    return section;
}

CardSection total_section(const SessionPlan& plan) {
    CardSection section = section_of("In all", 2, CardSection::Look::two_columns);
    for (const PlannedTotal& total : plan.totals)
        section.rows.push_back(total.liquid ? dose_row(total) : mass_row(total.name, total.mass, total.volume));
    section.rows.push_back(water_row("water to carry", plan.water_to_carry));
    section.rows.push_back(
        mass_row(fmt::format("ready, in {} {}", plan.containers, plan.containers == 1 ? "tub" : "tubs"), plan.wet_mass,
                 plan.wet_volume));
    return section;
}

CardSection mind_section(const SessionPlan& plan) {
    CardSection section = section_of("Mind", 2, CardSection::Look::notes);
    const auto note = [&](const std::string& text) {
        CardRow row;
        row.what = text;
        section.rows.push_back(std::move(row));
    };
    for (const PlanBreach& breach : plan.breaches) {
        const Mass* mass = std::get_if<Mass>(&breach.planned);
        note("BREAKS A RULE: " + breach.rule + "; planned " +
             (mass ? shown_mass(kitchen_mass(*mass)) : shown_volume(std::get<Volume>(breach.planned))));
    }
    for (const std::string& caution : plan.cautions) note(caution);
    for (const std::string& rule : plan.venue_notes) note(rule);
    for (const Warning& warning : plan.warnings) note(sentence(warning.message));
    return section;
}

}  // namespace baitwright
