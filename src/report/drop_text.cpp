#include <fmt/format.h>

#include <algorithm>

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

/// "likely 0.38 to 0.92 m", or that the person saw it.
std::string likely_length(const Range<Length>& range, LengthUnit unit) {
    if (shown_length(range.low, unit) == shown_length(range.high, unit)) return "as you saw it";
    return "likely " + shown_length(range.low, range.high, unit);
}

/// How a ball fares that goes from outside as it sinks.
std::string wears_line(const DropAnswer& answer) {
    const LengthUnit unit = lengths_unit(answer);
    return fmt::format("It wears away as it sinks: half by {}, all by {} ({}), {} after it goes in.",
                       shown_length(*answer.half_worn, unit), shown_length(answer.breaks_depth, unit),
                       likely_length(answer.breaks_depth_range, unit), shown_wait(answer.breaks_at));
}

std::string brief_bottom_line(const DropAnswer& answer) {
    if (!(answer.lasts > Time{})) return "Not on the way: it falls apart on the bottom.";
    const std::string apart = answer.lasts < 1.0 * second ? "falls apart at once."
                                                          : "falls apart over about " + shown_wait(answer.lasts) + ".";
    if (lands_whole(answer)) return "Not on the way: it lands whole and " + apart;
    return worn_words(answer) + " lands after " + shown_wait(answer.breaks_at) + " and " + apart;
}

std::string brief_breaks_line(const DropAnswer& answer) {
    if (answer.raft)
        return fmt::format("It floats about {} until it has drunk enough, then goes down grain by grain.",
                           shown_wait(*answer.raft));
    switch (answer.breaks) {
        case Breaks::surface:
            return answer.hanging[0] < 0.01 ? "At the surface, and goes down grain by grain."
                                            : "At the surface, and hangs there as a cloud.";
        case Breaks::bottom:
            return brief_bottom_line(answer);
        case Breaks::midwater:
            break;
    }
    if (answer.half_worn) return wears_line(answer);
    const LengthUnit unit = lengths_unit(answer);
    return fmt::format("About {} down ({}), {} after it goes in.", shown_length(answer.breaks_depth, unit),
                       likely_length(answer.breaks_depth_range, unit), shown_wait(answer.breaks_at));
}

std::string down_line(const DropAnswer& answer) {
    if (const auto at_once = down_at_once(answer)) return *at_once;
    const std::string likely = shown_wait(answer.landed_half_range.low, answer.landed_half_range.high);
    return fmt::format("Half after {} (likely {}), nine tenths after {}.", shown_wait(answer.landed.p50), likely,
                       shown_wait(answer.landed.p90));
}

std::string wide_line(const DropAnswer& answer) {
    const bool drawn_out = is_drawn_out(answer);
    const Length other = drawn_out ? answer.length.most : answer.width.half;
    const LengthUnit unit = lengths_unit(answer);
    const std::string likely = likely_length(answer.width_range, unit), wide = shown_length(answer.width.most, unit);
    return drawn_out ? fmt::format("Nine tenths lie {} long and {} wide ({}).", shown_length(other, unit), wide, likely)
                     : fmt::format("Nine tenths lie {} across ({}), half within {}.", wide, likely,
                                   shown_length(other, unit));
}

/// Where to put it in, and the tow that we took for it where the person's own is not known to the bottom.
std::string brief_drift_line(const DropAnswer& answer) {
    std::string text = drift_line(answer);
    if (answer.tow == Speed{} && answer.tow_bottom == Speed{}) return text;
    if (answer.water == TowProfile::lake) text += " Taken for still water under a wind.";
    if (answer.water == TowProfile::river) text += " Taken for flowing water.";
    return text;
}

std::string hangs_line(const DropAnswer& answer) {
    if (answer.hanging[0] < 0.005) return "Nothing after a minute.";
    return fmt::format("{} after 1 min, {} after 10 min.", hanging_percent(answer.hanging[0]),
                       hanging_percent(answer.hanging[2]));
}

std::string brief_sure_line(const DropAnswer& answer) {
    std::string text = "Within a factor of two or three; likely means 9 times in 10. ";
    return text + (answer.own.empty() ? "Try one in clear water." : own_numbers_line(answer));
}

/// What all of them share goes into the title, and only what sets them apart into the rows.
struct SideBySide {
    bool feels = false, forms = false;  ///< whether these differ
};

SideBySide side_by_side(const std::vector<DropAnswer>& answers) {
    SideBySide differ;
    for (const DropAnswer& answer : answers) {
        differ.feels = differ.feels || answer.feel != answers.front().feel;
        differ.forms = differ.forms || answer.form != answers.front().form;
    }
    return differ;
}

std::string comparison_title(const DropAnswer& first, const SideBySide& differ) {
    std::string title = first.recipe;
    if (!differ.feels) title += ", " + first.feel;
    if (!differ.forms) title += ", " + form_text(first);
    return title + ", in " + shown_as_told(first.depth) + " of water";
}

std::string compared_name(const DropAnswer& answer, const SideBySide& differ) {
    if (!differ.feels) return form_text(answer);
    return differ.forms ? answer.feel + ", " + form_text(answer) : answer.feel;
}

std::string breaks_cell(const DropAnswer& answer, LengthUnit unit) {
    if (answer.breaks == Breaks::surface) return "surface";
    if (answer.breaks == Breaks::bottom) return mostly_wears_off(answer) ? "worn off" : "bottom";
    return (answer.half_worn ? "by " : "") + shown_length(answer.breaks_depth, unit);
}

TextTable comparison_table(const std::vector<DropAnswer>& answers, const SideBySide& differ) {
    TextTable table({Align::left, Align::right, Align::right, Align::right, Align::right, Align::right});
    table.row({"", "breaks", "half down", "90 % down", "patch", "hangs 10 min"});
    std::vector<Length> depths, widths;
    for (const DropAnswer& answer : answers) {
        if (answer.breaks == Breaks::midwater && !answer.classes.empty()) depths.push_back(answer.breaks_depth);
        if (!answer.classes.empty()) widths.push_back(answer.width.most);
    }
    const LengthUnit depth_unit = one_unit(depths), width_unit = one_unit(widths);
    for (const DropAnswer& answer : answers) {
        const std::string name = compared_name(answer, differ);
        if (answer.classes.empty()) {
            table.row({name, "floats", "", "", "", ""});
            continue;
        }
        table.row({name, breaks_cell(answer, depth_unit), shown_wait(answer.landed.p50), shown_wait(answer.landed.p90),
                   shown_length(answer.width.most, width_unit), shown_whole_percent(answer.hanging[2])});
    }
    return table;
}

/// What should be known of some of them, each said once, behind those that it is true of.
void mind_compared(const std::vector<DropAnswer>& answers, const SideBySide& differ, Told& told) {
    struct Mind {
        std::string what, which;
        std::size_t times = 0;
    };
    std::vector<Mind> minds;
    for (const DropAnswer& answer : answers)
        for (const Warning& warning : answer.warnings) {
            auto mind =
                std::find_if(minds.begin(), minds.end(), [&](const Mind& m) { return m.what == warning.message; });
            if (mind == minds.end()) mind = minds.insert(minds.end(), {warning.message, "", 0});
            mind->which += (mind->which.empty() ? "" : "; ") + compared_name(answer, differ);
            ++mind->times;
        }
    for (const Mind& mind : minds)
        told.line("Mind", sentence(mind.times == answers.size() ? mind.what : mind.which + ": " + mind.what));
}

}  // namespace

Told drop_told(const DropAnswer& answer) {
    Told told;
    told.title(drop_title(answer));
    if (!answer.classes.empty()) {
        told.line("Breaks", brief_breaks_line(answer));
        told.line("Down", down_line(answer));
        told.line("Wide", wide_line(answer));
        told.line("Drift", brief_drift_line(answer));
        told.line("Hangs", hangs_line(answer));
        if (const std::string afloat = afloat_line(answer); !afloat.empty()) told.line("Floats", afloat);
        if (in_a_cup(answer)) told.line("Cup", sentence(level_cup_words));
        if (answer.hook) told.line("Hook", hook_line(*answer.hook, answer));
        told.line("How sure", brief_sure_line(answer));
    }
    told.mind(answer.warnings);
    told.take_care_in_short(answer.cautions);
    return told;
}

Told drop_comparison_told(const std::vector<DropAnswer>& answers) {
    const SideBySide differ = side_by_side(answers);
    Told told;
    told.title(comparison_title(answers.front(), differ));
    told.table(comparison_table(answers, differ));
    told.gap();
    told.line("How sure", "Estimates within a factor of two or three; the order is surer than the numbers.");
    mind_compared(answers, differ, told);
    told.take_care_in_short(answers.front().cautions);
    return told;
}

}  // namespace baitwright
