#include "report/drop_lines.h"

#include <fmt/format.h>

#include <cmath>

#include "bait/kitchen_rounding.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/drop_extent.h"
#include "report/wait_text.h"

namespace baitwright {

std::string drop_title(const DropAnswer& answer) {
    return fmt::format("{}, {}: {}, about {} wet ({} dry), in {} of water", answer.recipe, answer.feel,
                       form_text(answer), shown_mass(kitchen_mass(answer.wet_mass)),
                       shown_mass(kitchen_mass(answer.dry_mass)), shown_as_told(answer.depth));
}

std::string expect_line(const DropAnswer& answer) {
    const std::string wide = ", lies " + shown_length(answer.width.most) + " wide.";
    const std::string down = ", half is on the bed after " + shown_wait(answer.landed.p50) + wide;
    if (answer.raft) return "Floats about " + shown_wait(*answer.raft) + " first" + down;
    if (answer.breaks == Breaks::surface) return "Breaks at the surface" + down;
    if (answer.breaks == Breaks::midwater) return "Breaks " + shown_length(answer.breaks_depth) + " down" + down;
    if (!(answer.breaks_at > Time{})) return "Goes to the bed whole" + wide;
    return "Lands whole after " + shown_wait(answer.breaks_at) + wide;
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
