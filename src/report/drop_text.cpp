#include <fmt/format.h>

#include "quantities/units.h"
#include "report/display.h"
#include "report/drop_extent.h"
#include "report/drop_lines.h"
#include "report/drop_report.h"
#include "report/level_cup.h"
#include "report/text_table.h"
#include "report/wait_text.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

/// "likely 0.38 to 0.92 m", or that the person saw it.
std::string likely_length(const Range<Length>& range) {
    if (shown_length(range.low) == shown_length(range.high)) return "as you saw it";
    return "likely " + shown_length(range.low, range.high);
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
            return answer.lasts > Time{} ? fmt::format("Not on the way: it lands whole and falls apart over about {}.",
                                                       shown_wait(answer.lasts))
                                         : "Not on the way: it falls apart on the bottom.";
        case Breaks::midwater:
            break;
    }
    return fmt::format("About {} down ({}), {} after it goes in.", shown_length(answer.breaks_depth),
                       likely_length(answer.breaks_depth_range), shown_wait(answer.breaks_at));
}

std::string down_line(const DropAnswer& answer) {
    const std::string likely = shown_wait(answer.landed_half_range.low, answer.landed_half_range.high);
    if (answer.breaks == Breaks::bottom)
        return fmt::format("All of it after about {} (likely {}).", shown_wait(answer.landed.p50), likely);
    return fmt::format("Half after {} (likely {}), nine tenths after {}.", shown_wait(answer.landed.p50), likely,
                       shown_wait(answer.landed.p90));
}

std::string wide_line(const DropAnswer& answer) {
    const std::string likely = likely_length(answer.width_range);
    if (is_drawn_out(answer))
        return fmt::format("Nine tenths lie {} long and {} wide ({}).", shown_length(answer.length.most),
                           shown_length(answer.width.most), likely);
    return fmt::format("Nine tenths lie {} across ({}), half within {}.", shown_length(answer.width.most), likely,
                       shown_length(answer.width.half));
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

TextTable comparison_table(const std::vector<DropAnswer>& answers) {
    TextTable table({Align::left, Align::right, Align::right, Align::right, Align::right, Align::right});
    table.row({"", "breaks", "half down", "90 % down", "patch", "hangs 10 min"});
    for (const DropAnswer& answer : answers) {
        if (answer.classes.empty()) {
            table.row({answer.feel + ", " + form_text(answer), "floats", "", "", "", ""});
            continue;
        }
        const std::string breaks = answer.breaks == Breaks::surface  ? "surface"
                                   : answer.breaks == Breaks::bottom ? "bottom"
                                                                     : shown_length(answer.breaks_depth);
        table.row({answer.feel + ", " + form_text(answer), breaks, shown_wait(answer.landed.p50),
                   shown_wait(answer.landed.p90), shown_length(answer.width.most),
                   shown_whole_percent(answer.hanging[2])});
    }
    return table;
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
    Told told;
    told.title(fmt::format("{} in {} of water", answers.front().recipe, shown_as_told(answers.front().depth)));
    told.table(comparison_table(answers));
    told.gap();
    told.line("How sure", "Estimates within a factor of two or three; the order is surer than the numbers.");
    told.take_care_in_short(answers.front().cautions);
    return told;
}

}  // namespace baitwright
