#include <fmt/format.h>

#include <cmath>

#include "answers/drop/drop_feed.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/drop_extent.h"
#include "report/drop_lines.h"
#include "report/drop_report.h"
#include "report/level_cup.h"
#include "report/one_unit.h"
#include "report/text_table.h"
#include "report/wait_text.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string bottom_line(const DropAnswer& answer) {
    const std::string apart = answer.lasts >= 1.0 * second
                                  ? fmt::format(" and falls apart there over about {}.", shown_wait(answer.lasts))
                                  : " and falls apart there.";
    if (!(answer.breaks_at > Time{})) return "It goes to the bottom whole" + apart;
    const std::string when = shown_wait(answer.breaks_at);
    if (lands_whole(answer)) return "It lands whole on the bottom after about " + when + apart;
    return worn_words(answer) + " lands on the bottom after about " + when + apart;
}

std::string breaks_line(const DropAnswer& answer) {
    if (answer.raft)
        return fmt::format("It floats at first: about {} until it has drunk enough, then it goes down grain by grain.",
                           shown_wait(*answer.raft));
    switch (answer.breaks) {
        case Breaks::surface:
            return answer.hanging[0] < 0.01 ? "It parts at the surface and goes down grain by grain."
                                            : "It breaks at the surface and hangs there as a cloud.";
        case Breaks::bottom:
            return bottom_line(answer);
        case Breaks::midwater:
            break;
    }
    const Range<Length>& likely = answer.breaks_depth_range;
    const LengthUnit unit = lengths_unit(answer);
    const std::string how = answer.half_worn
                                ? fmt::format("It wears away as it sinks: half has gone by {}, all of it by",
                                              shown_length(*answer.half_worn, unit))
                                : std::string("It breaks");
    return fmt::format("{} about {} down (likely {}), {} after it went in.", how,
                       shown_length(answer.breaks_depth, unit), shown_length(likely.low, likely.high, unit),
                       shown_wait(answer.breaks_at));
}

std::string landing_line(const DropAnswer& answer) {
    if (const auto at_once = down_at_once(answer)) return *at_once;
    const std::string tenth = shown_wait(answer.landed.p10), half = shown_wait(answer.landed.p50);
    return fmt::format("{} after {} (likely {}), nine tenths after {}.",
                       tenth == half ? "Half is down" : "A tenth is down after " + tenth + ", half", half,
                       shown_wait(answer.landed_half_range.low, answer.landed_half_range.high),
                       shown_wait(answer.landed.p90));
}

std::string hanging_line(const DropAnswer& answer) {
    if (answer.hanging[0] < 0.005) return "Nothing after a minute.";
    return fmt::format("After 1 min {}, after 5 min {}, after 10 min {}, after 30 min {}.",
                       hanging_percent(answer.hanging[0]), hanging_percent(answer.hanging[1]),
                       hanging_percent(answer.hanging[2]), hanging_percent(answer.hanging[3]));
}

std::string carpet_line(const DropAnswer& answer) {
    const bool drifts = is_drawn_out(answer);
    const Range<Length>& range = answer.width_range;
    const LengthUnit unit = lengths_unit(answer);
    const std::string most = shown_length(answer.width.most, unit), half = shown_length(answer.width.half, unit),
                      likely = shown_length(range.low, range.high, unit);
    std::string text =
        drifts ? fmt::format("Nine tenths lie {} long and {} wide (likely {} wide), half within {} by {}.",
                             shown_length(answer.length.most, unit), most, likely,
                             shown_length(answer.length.half, unit), half)
               : fmt::format("Nine tenths lie in a patch {} across (likely {}), half within {}.", most, likely, half);
    if (answer.free_offerings >= 1)
        text += fmt::format(" About {} grains to a hand ({}) of it, from {} in all.",
                            answer.in_hand < 9.5 ? significant(answer.in_hand, 1) : shown_count(answer.in_hand),
                            shown_hand(), shown_count(answer.free_offerings));
    return text;
}

/// How the tow changes with the depth; it is ours unless it was told.
std::string tow_line(const DropAnswer& answer) {
    switch (answer.water) {
        case TowProfile::lake:
            return "Taken for still water under a wind: down below it runs back, and stands at the bed.";
        case TowProfile::river:
            return "Taken for flowing water: slower towards the bed, and never back.";
        default:
            return "As you told it, straight from top to bottom.";
    }
}

TextTable parts_table(const DropAnswer& answer) {
    TextTable table({Align::left, Align::right, Align::right, Align::right, Align::right, Align::right});
    table.row({"its own fate", "share", "half down", "patch", "drift", "cloud"});
    const auto drifts = [](const DropPart& part) { return part.landed && std::abs(part.drift.si()) >= 0.03; };
    std::vector<Length> ways;
    for (const DropPart& part : answer.parts)
        if (drifts(part)) ways.push_back(part.drift);
    const LengthUnit wide = lengths_unit(answer), far = one_unit(ways);
    for (const DropPart& part : answer.parts)
        table.row({part.name, shown_percent(part.share), part.landed ? shown_wait(*part.landed) : "never",
                   part.landed ? shown_length(part.width, wide) : "",
                   drifts(part)  ? shown_length(part.drift, far)
                   : part.landed ? "none"
                                 : "",
                   shown_percent(part.fines)});
    return table;
}

std::string fish_line(const DropAnswer& answer) {
    if (answer.start_beyond < 2 * half_section)
        return fmt::format(
            "Start by the edge of the feed, at most {} past its middle, for hardly any lies further out, and work back onto it as bites slow (common practice).",
            shown_length(answer.start_beyond));
    return fmt::format(
        "Start about {} past the middle of the feed, by its edge and half a pole section, and work back onto it as bites slow (common practice).",
        shown_length(answer.start_beyond));
}

constexpr const char* full_sure_words =
    "All of this is an estimate within a factor of two or three; likely means 9 times in 10.";

std::string surer_line(const DropAnswer& answer) {
    if (!answer.own.empty()) return own_numbers_line(answer);
    return "Drop one into a clear bucket or clear water and put in what you saw: how long a ball held, how deep a cupful broke, how wide it lay, what a level cup weighs.";
}

}  // namespace

Told drop_full_told(const DropAnswer& answer) {
    Told told;
    told.title(drop_title(answer));
    if (!answer.classes.empty()) {
        told.say(expect_line(answer));
        told.line("How sure", full_sure_words);
        told.gap();
        told.line("Breaks", breaks_line(answer));
        told.line("Landing", landing_line(answer));
        if (const std::string afloat = afloat_line(answer); !afloat.empty()) told.line("Floats", afloat);
        told.line("Hanging", hanging_line(answer));
        told.line("Carpet", carpet_line(answer));
        told.line("Drift", drift_line(answer));
        if (answer.tow != Speed{} || answer.tow_bottom != Speed{}) told.line("Tow", tow_line(answer));
        if (in_a_cup(answer)) told.line("Cup", sentence(level_cup_words));
        if (answer.hook) told.line("Hook", hook_line(*answer.hook, answer));
        told.gap();
        told.table(parts_table(answer));
        told.gap();
        told.line("Fish", fish_line(answer));
        told.line("Surer", surer_line(answer));
    }
    told.mind(answer.warnings);
    told.take_care_in_short(answer.cautions);
    return told;
}

}  // namespace baitwright
