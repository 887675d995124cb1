#include <fmt/format.h>

#include <algorithm>

#include "bait/kitchen_rounding.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/feed_size.h"
#include "report/plan_report.h"
#include "report/session_moment.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

std::string rest_line(const RestOfFeed& feed) {
    std::string text = fmt::format("{}: about {} left ({}).", feed.name, shown_volume(feed.left),
                                   shown_mass(kitchen_mass(feed.left_mass)));
    if (feed.planned_put_ins > 0)
        text += fmt::format(" The plan still has {} {}, {} ({}).", feed.planned_put_ins,
                            feed.planned_put_ins == 1 ? "put-in" : "put-ins", shown_volume(feed.still_planned),
                            shown_mass(kitchen_mass(feed.still_planned_mass)));
    else if (feed.kept > 0 || feed.top_up > Volume{})
        text += " It is kept for when bites slow.";
    else
        text += " The plan has no more of it.";
    return sentence(text);
}

/// "Put in one ball of 45 mm of silt bed now; 2 more are reckoned for."
std::string slow_line(const SlowTopUp& call) {
    const std::string size = shown_size(call.each.size);
    const bool loose = call.each.form == FeedForm::loose;
    std::string text =
        loose ? fmt::format("{} of {}, loose, now", size, call.each.name)
              : fmt::format("{} {}{} of {} of {} now", call.each.count == 1 ? "one" : std::to_string(call.each.count),
                            name_of(call.each.form), call.each.count == 1 ? "" : "s", size, call.each.name);
    if (call.more < 1) return text + "; that is the last of it.";
    return text + (call.more == 1 ? std::string("; one more is reckoned for.")
                                  : fmt::format("; {:.0f} more are reckoned for.", call.more));
}

std::string top_up_line(const RestOfFeed& feed) {
    if (feed.top_up_as == FeedForm::ball)
        return fmt::format("{}: one tight ball of {:.0f} mm, and a pinch loose over it.", feed.name,
                           feed.ball.in(millimetre));
    return fmt::format("{}: about {} loose, over a wider area.", feed.name, shown_volume(feed.top_up));
}

std::string spread_line(const RestOfFeed& feed, Bites bites) {
    if (feed.put_ins == 0) return {};
    const std::string each = shown_volume(feed.each);
    if (feed.put_ins == 1)
        return fmt::format("{}: one more of {}, about {} from now.", feed.name, each, shown_time(feed.gap));
    return fmt::format("{}: {} more of {}, one every {}{}.", feed.name, feed.put_ins, each, shown_time(feed.gap),
                       bites == Bites::none ? ", but only once bites come" : "");
}

bool is_called_for(const std::string& name, const RestOfSession& rest) {
    return std::any_of(rest.put_in_now.begin(), rest.put_in_now.end(),
                       [&](const SlowTopUp& call) { return call.each.name == name; });
}

}  // namespace

Told rest_told(const SessionPlan& plan, const RestOfSession& rest) {
    Told told;
    const bool counted = !plan.start && rest.now >= 0.5 * minute;
    told.title(fmt::format("{}, {}{}: {} left", plan.strategy, session_moment(plan, rest.now),
                           counted ? " after the start" : "", shown_time(rest.left)));
    for (const SlowTopUp& call : rest.put_in_now) told.line("Put in", sentence(slow_line(call)));
    for (const RestOfFeed& feed : rest.feeds) told.line("Left", rest_line(feed));
    for (const RestOfFeed& feed : rest.feeds)
        if (feed.top_up > Volume{} && !is_called_for(feed.name, rest)) told.line("Top up", sentence(top_up_line(feed)));
    for (const RestOfFeed& feed : rest.feeds)
        if (const std::string spread = spread_line(feed, rest.bites); !spread.empty())
            told.line("Then", sentence(spread));
    for (const PlanAdvice& advice : rest.advice) told.line("Advice", advice.text + " Because " + advice.reason + ".");
    told.line("How sure", "Rules of thumb (common practice, no source). The fish decide.");
    return told;
}

}  // namespace baitwright
