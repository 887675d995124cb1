#include "report/session_sheet.h"

#include <fmt/format.h>

#include "quantities/clock.h"
#include "quantities/units.h"
#include "report/degree_sign.h"
#include "report/display.h"
#include "report/hot_day_report.h"
#include "report/session_moment.h"
#include "report/sheet_sections.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

std::string subtitle_of(const SessionPlan& plan) {
    std::string text = shown_moment(plan.length);
    if (plan.start) text += " from " + session_moment(plan, Time{});
    if (!plan.venue.empty()) text += ", " + plan.venue;
    if (plan.people > 1) text += fmt::format(", {} anglers", plan.people);
    text += ", water " + shown_temperature(plan.water);
    if (plan.begin < Time{}) {
        text += (plan.start ? ". Begin at " : ". Begin ") + session_moment(plan, plan.begin);
        if (!plan.start) text += " the start";
        text += ": " + work_text(plan) + " of work";
        if (plan.travel > Time{}) text += ", " + hours_and_minutes(plan.travel) + " of way";
    }
    return text + ".";
}

std::string foot_of(const SessionPlan& plan) {
    std::string text = "The venue's rules and the authority's byelaws come first. ";
    if (!plan.start) text += "Times are in hours and minutes from the start. ";
    if (plan.people > 1) text += "Weights are for everyone, put-ins for each angler. ";
    if (plan.cost.unrolled.spare > Ratio(0))
        text += shown_percent(plan.cost.unrolled.spare) + " spare is in the weights. ";
    text += "Water and soaks are estimates: go by the feel.";
    return text;
}

Json row_json(const CardRow& row) {
    Json tallies = Json::array();
    for (const CardTally& tally : row.tallies) tallies.push_back({{"words", tally.words}, {"strokes", tally.strokes}});
    return {{"when", row.when}, {"what", row.what},   {"amount", row.amount},
            {"also", row.also}, {"boxes", row.boxes}, {"tallies", tallies}};
}

Json sections_json(const CardSheet& sheet) {
    Json sections = Json::array();
    for (const CardSection& section : sheet.sections) {
        Json rows = Json::array();
        for (const CardRow& row : section.rows) rows.push_back(row_json(row));
        sections.push_back({{"heading", section.heading}, {"rows", rows}});
    }
    return sections;
}

std::string pages_text(std::size_t pages) {
    if (pages == 1) return "A5";
    return fmt::format("{} pages of A5", pages);
}

}  // namespace

CardSheet with_degree_signs(CardSheet sheet) {
    sheet.subtitle = with_degree_signs(sheet.subtitle);
    for (CardSection& section : sheet.sections)
        for (auto* rows : {&section.rows, &section.in_short})
            for (CardRow& row : *rows) row.what = with_degree_signs(row.what);
    return sheet;
}

CardSheet session_sheet(const SessionPlan& plan, Date today) {
    CardSheet sheet;
    sheet.title = plan.strategy;
    sheet.subtitle = subtitle_of(plan);
    sheet.foot = foot_of(plan);
    sheet.day = date_text(today);
    sheet.sections = weigh_sections(plan);
    for (CardSection section : {soak_section(plan), before_section(plan), total_section(plan), water_section(plan),
                                damp_section(plan), mind_section(plan)})
        sheet.sections.push_back(std::move(section));
    std::erase_if(sheet.sections, [](const CardSection& section) { return section.rows.empty(); });
    return sheet;
}

Json card_json(const SessionPlan& plan, const CardSheet& sheet, const std::string& file, SheetFormat format,
               const PrintedSheet& printed) {
    Json json = json_record("card", plan.warnings);
    json["strategy"] = plan.strategy;
    json["file"] = file;
    json["format"] = name_of(format);
    json["letters_pt"] = printed.letters_pt;
    json["pages"] = printed.pages;
    json["lines_left_out"] = printed.rows_left_out;
    Json totals = Json::array();
    for (const PlannedTotal& total : plan.totals)
        totals.push_back(
            {{"name", total.name}, {"mass_g", total.mass.in(gram)}, {"volume_ml", total.volume.in(millilitre)}});
    json["totals"] = totals;
    json["water_to_carry_g"] = plan.water_to_carry.in(gram);
    json["wet_mass_g"] = plan.wet_mass.in(gram);
    json["sheet"] = {
        {"title", sheet.title}, {"subtitle", sheet.subtitle}, {"sections", sections_json(sheet)}, {"foot", sheet.foot}};
    return json;
}

Told card_told(const SessionPlan& plan, const std::string& file, const PrintedSheet& printed) {
    Told told;
    told.heading(fmt::format("The sheet of {} is in {}: {}, letters of {:g} pt.", plan.strategy, file,
                             pages_text(printed.pages), printed.letters_pt));
    if (printed.rows_left_out > 0)
        told.line("Mind", fmt::format("To fit, {} of its lines are cut short; they are in: baitwright plan.",
                                      printed.rows_left_out));
    for (const PlanBreach& breach : plan.breaches)
        told.line("Mind", sentence("the plan breaks a rule: " + breach.rule));
    told.mind(plan.warnings);
    return told;
}

}  // namespace baitwright
