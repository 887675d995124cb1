#include "report/drop_lines.h"

#include <fmt/format.h>

#include <cmath>

#include "quantities/units.h"
#include "report/display.h"
#include "report/drop_extent.h"
#include "report/one_unit.h"
#include "report/wait_text.h"

namespace baitwright {

std::string drop_title(const DropAnswer& answer) {
    return fmt::format("{}, {}: {}, about {} wet ({} dry), in {} of water", answer.recipe, answer.feel,
                       form_text(answer), shown_mass(scale_mass(answer.wet_mass)),
                       shown_mass(scale_mass(answer.dry_mass)), shown_as_told(answer.depth));
}

bool lands_whole(const DropAnswer& answer) {
    return answer.breaks == Breaks::bottom && answer.lands_as_one > 0.95;
}

bool mostly_wears_off(const DropAnswer& answer) {
    return answer.breaks == Breaks::bottom && answer.lands_as_one < 0.5;
}

std::string worn_words(const DropAnswer& answer) {
    const double worn = 1 - answer.lands_as_one;
    if (worn > 0.985) return "Nearly all of it wears off on the way; the crumb that is left";
    const std::string share = shown_whole_percent(worn);
    return (mostly_wears_off(answer) ? "Most of it, " + share + "," : share + " of it") +
           " wears off on the way; the rest";
}

std::optional<std::string> down_at_once(const DropAnswer& answer) {
    const std::string when = shown_wait(answer.landed.p50);
    if (answer.breaks != Breaks::bottom || when != shown_wait(answer.landed.p90)) return std::nullopt;
    if (when == "at once") return "All of it at once.";
    return fmt::format("All of it after about {} (likely {}){}.", when,
                       shown_wait(answer.landed_half_range.low, answer.landed_half_range.high),
                       answer.hanging[0] < 0.005 ? "" : ", but for what wears off on the way");
}

std::string expect_line(const DropAnswer& answer) {
    const bool midwater = answer.breaks == Breaks::midwater;
    const LengthUnit unit = lengths_unit(answer);
    const std::string length = is_drawn_out(answer) ? shown_length(answer.length.most, unit) + " long and " : "";
    const std::string wide = ", lies " + length + shown_length(answer.width.most, unit) + " wide.";
    const std::string down = ", half is on the bed after " + shown_wait(answer.landed.p50) + wide;
    if (answer.raft) return "Floats about " + shown_wait(*answer.raft) + " first" + down;
    if (answer.breaks == Breaks::surface) return "Breaks at the surface" + down;
    if (midwater)
        return (answer.half_worn ? "Has worn away " : "Breaks ") + shown_length(answer.breaks_depth, unit) + " down" +
               down;
    if (!(answer.breaks_at > Time{})) return "Goes to the bed whole" + wide;
    if (mostly_wears_off(answer)) return "Most of it wears off on the way" + down;
    return (lands_whole(answer) ? "Lands whole after " : "Lands after ") + shown_wait(answer.breaks_at) + wide;
}

std::string drift_line(const DropAnswer& answer) {
    const bool other_way = answer.tow < Speed{};  // then below zero is down the tow
    const double middle = other_way ? -answer.drift.p50.si() : answer.drift.p50.si();
    if (std::abs(middle) < 0.03) return "Put it in over the swim: it hardly drifts.";
    const Length low = other_way ? -answer.drift_range.high : answer.drift_range.low,
                 high = other_way ? -answer.drift_range.low : answer.drift_range.high;
    const bool either_way = low < Length{} && high > Length{};
    const LengthUnit unit = one_unit({low, high, either_way ? high : Length::from_si(middle)});
    const auto way = [&](Length drift) {
        return shown_length(drift, unit) + (drift > Length{} ? " down" : " against");
    };
    if (either_way)
        return fmt::format(
            "Put it in over the swim: which way its middle drifts is not sure (likely {} the top tow to {} it).",
            way(low), way(high));
    const bool alike = shown_length(low, unit) == shown_length(high, unit);
    const std::string likely = low < Length{} ? shown_length(-high, -low, unit) : shown_length(low, high, unit);
    return fmt::format("Put it in {}{} {} the tow: its middle lands that far {} the top tow{}.", alike ? "about " : "",
                       shown_length(Length::from_si(middle), unit), middle > 0 ? "up" : "down",
                       middle > 0 ? "down" : "against", alike ? "" : " (likely " + likely + ")");
}

std::string afloat_line(const DropAnswer& answer) {
    std::string text;
    for (const DropPart& part : answer.parts)
        if (part.floats)
            text += (text.empty() ? "" : "; ") + part.name + " about " + shown_wait(*part.floats) + " before it sinks";
    return text.empty() || answer.raft ? "" : text + ".";
}

std::string hook_line(const HookAnswer& hook, const DropAnswer& answer) {
    const char* how = hook.with_the_feed               ? "with the feed"
                      : hook.lands < answer.landed.p10 ? "before the feed"
                                                       : "behind the feed";
    return fmt::format("{} falls alone in about {}: {}.", hook.name, shown_wait(hook.lands), how);
}

bool in_a_cup(const DropAnswer& answer) {
    return answer.form.starts_with("a level cup");
}

std::string hanging_percent(double share) {
    return share < 0.005 ? std::string("nothing") : shown_whole_percent(share);
}

std::string own_numbers_line(const DropAnswer& answer) {
    if (answer.own.empty()) return {};
    std::string text = "Your own numbers in it: ";
    for (std::size_t i = 0; i < answer.own.size(); ++i) {
        if (i) text += ", ";
        text += answer.own[i];
    }
    return text + ".";
}

}  // namespace baitwright
