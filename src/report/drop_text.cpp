#include <fmt/format.h>

#include <cmath>

#include "answers/drop/drop_feed.h"
#include "bait/kitchen_rounding.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/drop_extent.h"
#include "report/drop_report.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string shown_wait(Time time) {
    const double seconds = time.in(second);
    if (seconds < 0.05) return "at once";
    if (seconds < 9.5) return significant(seconds, seconds < 1.95 ? 2 : 1) + " s";
    if (seconds < 97.5) return fmt::format("{:.0f} s", 5 * std::round(seconds / 5));
    return seconds < 570 ? fmt::format("{:g} min", 0.5 * std::round(seconds / 30)) : shown_time(time);
}

std::string breaks_line(const DropAnswer& answer) {
    if (answer.raft)
        return fmt::format("It floats at first: about {} until it has drunk enough, then it goes down grain by grain.",
                           shown_wait(*answer.raft));
    switch (answer.breaks) {
        case Breaks::surface:
            return answer.hanging[0] < 0.01 ? "It parts at the surface and goes down grain by grain."
                                            : "It breaks at the surface and hangs there as a cloud.";
        case Breaks::bottom: {
            std::string text = answer.breaks_at > Time{}
                                   ? fmt::format("It lands whole on the bottom after about {} (likely {} to {})",
                                                 shown_wait(answer.breaks_at), shown_wait(answer.landed_half_range.low),
                                                 shown_wait(answer.landed_half_range.high))
                                   : std::string("It goes to the bottom whole");
            return text + (answer.lasts > Time{}
                               ? fmt::format(" and falls apart there over about {}.", shown_wait(answer.lasts))
                               : " and falls apart there.");
        }
        case Breaks::midwater:
            break;
    }
    return fmt::format("It breaks about {} down (likely {}), {} after it went in.", shown_length(answer.breaks_depth),
                       shown_length(answer.breaks_depth_range.low, answer.breaks_depth_range.high),
                       shown_wait(answer.breaks_at));
}

std::string landing_line(const DropAnswer& answer) {
    if (answer.breaks == Breaks::bottom)
        return answer.hanging[0] < 0.01 ? "All of it is on the bottom at once."
                                        : "All of it is on the bottom at once, but for what wears off on the way.";
    return fmt::format("A tenth is down after {}, half after {} (likely {} to {}), nine tenths after {}.",
                       shown_wait(answer.landed.p10), shown_wait(answer.landed.p50),
                       shown_wait(answer.landed_half_range.low), shown_wait(answer.landed_half_range.high),
                       shown_wait(answer.landed.p90));
}

std::string hanging_line(const DropAnswer& answer) {
    const auto percent_of = [](double share) {
        return share < 0.005 ? std::string("nothing") : shown_whole_percent(share);
    };
    if (answer.hanging[0] < 0.005) return "Nothing after a minute.";
    return fmt::format("After 1 min {}, after 5 min {}, after 10 min {}, after 30 min {}.",
                       percent_of(answer.hanging[0]), percent_of(answer.hanging[1]), percent_of(answer.hanging[2]),
                       percent_of(answer.hanging[3]));
}

std::string carpet_line(const DropAnswer& answer) {
    const bool drifts = is_drawn_out(answer);
    std::string text =
        drifts ? fmt::format("Nine tenths lie {} long and {} wide (likely {} wide)", shown_length(answer.length.most),
                             shown_length(answer.width.most),
                             shown_length(answer.width_range.low, answer.width_range.high))
               : fmt::format("Nine tenths lie in a patch {} across (likely {})", shown_length(answer.width.most),
                             shown_length(answer.width_range.low, answer.width_range.high));
    text += drifts ? fmt::format(", half within {} by {}.", shown_length(answer.length.half),
                                 shown_length(answer.width.half))
                   : fmt::format(", half within {}.", shown_length(answer.width.half));
    if (answer.free_offerings >= 1)
        text += fmt::format(" About {} grains to a hand ({}) of it, from {} in all.",
                            answer.in_hand < 9.5 ? significant(answer.in_hand, 1) : shown_count(answer.in_hand),
                            shown_hand(), shown_count(answer.free_offerings));
    return text;
}

std::string drift_line(const DropAnswer& answer) {
    const bool other_way = answer.tow < Speed{};  // then below zero is down the tow
    const double middle = other_way ? -answer.drift.p50.si() : answer.drift.p50.si();
    if (std::abs(middle) < 0.03) return "Put it in over the swim: it hardly drifts.";
    const auto way = [](Length drift) { return shown_length(drift) + (drift > Length{} ? " down" : " against"); };
    const Length low = other_way ? -answer.drift_range.high : answer.drift_range.low,
                 high = other_way ? -answer.drift_range.low : answer.drift_range.high;
    if (low < Length{} && high > Length{})
        return fmt::format(
            "Put it in over the swim: which way its middle drifts is not sure (likely {} the top tow to {} it).",
            way(low), way(high));
    const std::string likely = low < Length{} ? shown_length(-high, -low) : shown_length(low, high);
    return fmt::format("Put it in {} {} the tow: its middle lands that far {} the top tow (likely {}).",
                       shown_length(Length::from_si(middle)), middle > 0 ? "up" : "down",
                       middle > 0 ? "down" : "against", likely);
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

/// What of it stays up at first; where all of it does, its first line has said so.
std::string afloat_line(const DropAnswer& answer) {
    std::string text;
    for (const DropPart& part : answer.parts)
        if (part.floats)
            text += (text.empty() ? "" : "; ") + part.name + " about " + shown_wait(*part.floats) + " before it sinks";
    return text.empty() || answer.raft ? "" : text + ".";
}

TextTable parts_table(const DropAnswer& answer) {
    TextTable table({Align::left, Align::right, Align::right, Align::right, Align::right, Align::right});
    table.row({"its own fate", "share", "half down", "patch", "drift", "cloud"});
    for (const DropPart& part : answer.parts)
        table.row({part.name, shown_percent(part.share), part.landed ? shown_wait(*part.landed) : "never",
                   part.landed ? shown_length(part.width) : "",
                   part.landed ? (std::abs(part.drift.si()) < 0.03 ? "none" : shown_length(part.drift)) : "",
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

std::string hook_line(const HookAnswer& hook, const DropAnswer& answer) {
    const char* how = hook.with_the_feed               ? "with the feed"
                      : hook.lands < answer.landed.p10 ? "before the feed"
                                                       : "behind the feed";
    return fmt::format("{} falls alone in about {}: {}.", hook.name, shown_wait(hook.lands), how);
}

std::string sure_line(const DropAnswer& answer) {
    std::string text = "All of this is an estimate within a factor of two or three; likely means 9 times in 10.";
    if (answer.own.empty())
        return text +
               " To be surer, drop one into a clear bucket or clear water and put in what you saw: how long a ball held, how deep a cupful broke, how wide it lay, what a level cup weighs.";
    text += " Your own numbers in it: ";
    for (std::size_t i = 0; i < answer.own.size(); ++i) text += (i ? ", " : "") + answer.own[i];
    return text + ".";
}

std::string title(const DropAnswer& answer) {
    return fmt::format("{}, {}: {}, about {} wet ({} dry), in {} of water", answer.recipe, answer.feel,
                       form_text(answer), shown_mass(kitchen_mass(answer.wet_mass)),
                       shown_mass(kitchen_mass(answer.dry_mass)), shown_as_told(answer.depth));
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
    told.title(title(answer));
    if (!answer.classes.empty()) {
        told.line("Breaks", breaks_line(answer));
        told.line("Landing", landing_line(answer));
        if (const std::string afloat = afloat_line(answer); !afloat.empty()) told.line("Floats", afloat);
        told.line("Hanging", hanging_line(answer));
        told.line("Carpet", carpet_line(answer));
        told.line("Drift", drift_line(answer));
        if (answer.tow != Speed{} || answer.tow_bottom != Speed{}) told.line("Tow", tow_line(answer));
        if (answer.hook) told.line("Hook", hook_line(*answer.hook, answer));
        told.gap();
        told.table(parts_table(answer));
        told.gap();
        told.line("Fish", fish_line(answer));
        told.line("How sure", sure_line(answer));
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
