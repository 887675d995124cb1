#include <fmt/format.h>

#include "bait/kitchen_rounding.h"
#include "quantities/units.h"
#include "report/display.h"
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
    else
        text += " The plan has no more of it.";
    return sentence(text);
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

}  // namespace

Told rest_told(const SessionPlan& plan, const RestOfSession& rest) {
    Told told;
    const bool counted = !plan.start && rest.now >= 0.5 * minute;
    told.title(fmt::format("{}, {}{}: {} left", plan.strategy, session_moment(plan, rest.now),
                           counted ? " after the start" : "", shown_time(rest.left)));
    for (const RestOfFeed& feed : rest.feeds) told.line("Left", rest_line(feed));
    for (const RestOfFeed& feed : rest.feeds)
        if (feed.top_up > Volume{}) told.line("Top up", sentence(top_up_line(feed)));
    for (const RestOfFeed& feed : rest.feeds)
        if (const std::string spread = spread_line(feed, rest.bites); !spread.empty())
            told.line("Then", sentence(spread));
    for (const PlanAdvice& advice : rest.advice) told.line("Advice", advice.text + " Because " + advice.reason + ".");
    told.line("How sure", "Rules of thumb (common practice, no source). The fish decide.");
    return told;
}

}  // namespace baitwright
